package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.port.Identities;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against fixtures/vectors, whose checks were computed by another program. */
class BoardFormatTest {

  @ParameterizedTest
  @ValueSource(strings = {"data-two-channels", "data-over-range-and-sync-inside", "data-empty"})
  void dataIsTakenApart(String name) {
    Vectors vector = Vectors.of("frame", name);
    Frame frame = BoardFormat.data(vector.payload(), 2);
    assertEquals(Long.parseLong(vector.value("first")), frame.first());
    assertEquals(2, frame.brokenBefore());
    assertEquals(
        vector.values("channel"),
        Arrays.stream(frame.codes()).map(BoardFormatTest::words).toList());
    int bits = Integer.parseInt(vector.value("status"), 16);
    Status status = frame.status();
    assertEquals((bits & 1) != 0, status.interlockWhole());
    assertEquals((bits & 2) != 0, status.relayClosed());
    assertEquals((bits & 4) != 0, status.discharging());
    assertEquals((bits & 8) != 0, status.overRange());
    assertEquals((bits & 16) != 0, status.lostBefore());
    assertEquals((bits & 32) != 0, status.watchdogTripped());
  }

  @Test
  void theIdentityNamesInstrumentFixtureAndChannels() {
    BoardFormat.Identity board = BoardFormat.identity(Vectors.of("frame", "identity").payload());
    assertEquals("COREWRIGHT,EMULATED-BOARD,7,1", board.instrument());
    assertTrue(Identities.isEmulated(board.instrument()));
    assertEquals("EF-SD48", board.fixture());
    assertEquals(
        List.of(
            new Channel("input", "V", 0.001, 0),
            new Channel("output", "V", 0.004, 0),
            new Channel("load", "A", 0.001, 0),
            new Channel("inputCurrent", "A", 0.002, 0)),
        board.channels());
    assertEquals(
        -2.5,
        BoardFormat.identity(Vectors.of("frame", "identity-utf8").payload())
            .channels()
            .get(0)
            .offset());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a,b,c,d",
        "a,b,c,d;fixture=f;channels=",
        "a,b,c;fixture=f;channels=output:V:1:0",
        "a,b,c,d;fixture=f;channels=output:V:x:0",
        "a,b,c,d;fixture=f;channels=output:V:0:0",
        "a,b,c,d;fixture=f;channels=output:V:NaN:0",
        "a,b,c,d;fixture=f;channels=output:V:1:Infinity",
        "a,b,c,d;channels=output:V:1:0;fixture=f"
      })
  void anIdentityThatCannotBeReadIsRefused(String text) {
    byte[] payload = text.getBytes(StandardCharsets.UTF_8);
    assertThrows(IllegalArgumentException.class, () -> BoardFormat.identity(payload));
  }

  @Test
  void aFrameThatDoesNotHoldWhatItSaysIsRefused() {
    byte[] whole = Vectors.of("frame", "data-two-channels").payload();
    for (int length = 0; length < whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertThrows(IllegalArgumentException.class, () -> BoardFormat.data(cut, 0));
    }
  }

  @Test
  void answersNameTheFrameTheyAnswer() {
    assertEquals(
        new BoardFormat.Answer(0x82, 1),
        BoardFormat.answer(Vectors.of("frame", "done-start").payload()));
    byte[] refused = Vectors.of("frame", "refused-relay").payload();
    assertEquals(new BoardFormat.Answer(0x86, 5), BoardFormat.answer(refused));
    assertEquals("interlock open (code 4)", BoardFormat.refusal(refused));
  }

  private static String words(short[] codes) {
    return java.util.stream.IntStream.range(0, codes.length)
        .mapToObj(i -> Short.toString(codes[i]))
        .collect(Collectors.joining(" "));
  }
}
