package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.FakeClock;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.describe.Span;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Frames of Modbus over RTU, bit by bit. The frames with registers AE41 5652 4340 at 6B and the
 * written register 1 are the widely printed examples to the MODBUS Application Protocol
 * Specification, 6.3 and 6.6, from memory: their checks, made by the library, fit.
 */
class RtuLineTest {
  private static final Connection CONNECTION =
      new Connection("digitizer", "peer", 115_200, Characters.EVEN_1, 11_520, "d", "none");
  private static final Span ASKED = new Span(3, 0x6B, 3);
  private static final int[] SAID = {0xAE41, 0x5652, 0x4340};
  private static final String QUESTION = "11 03 00 6B 00 03 76 87";
  private static final String ANSWER = "11 03 06 AE 41 56 52 43 40 49 AD";

  private final Peer peer = new Peer();
  private final RtuLine line =
      new RtuLine(peer, CONNECTION, 0x11, Duration.ofMillis(300), peer.clock);

  @Test
  void aQuestionAndItsAnswerAreThoseOfTheSpecification() {
    peer.answers = question -> ANSWER;
    assertArrayEquals(SAID, line.read(ASKED));
    peer.answers = question -> question;
    line.write(1, 3);
    assertEquals(List.of(QUESTION, "11 06 00 01 00 03 9A 9B"), peer.heard);
  }

  @Test
  void anAnswerMayComeInAnyPieces() {
    peer.answers = question -> ANSWER;
    for (int chunk = 1; chunk < 12; chunk++) {
      peer.chunk = chunk;
      assertArrayEquals(SAID, line.read(ASKED));
    }
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          '', no answer within 300 ms
          11 83 02 C1 34, 'it refuses with exception 2, illegal data address'
          """)
  void silenceAndARefusalEndIt(String answer, String found) {
    peer.answers = question -> answer;
    InstrumentFault fault = assertThrows(InstrumentFault.class, () -> line.read(ASKED));
    assertEquals(InstrumentFault.class, fault.getClass());
    assertEquals("reading 3 holding registers from 107 on pipe", fault.doing());
    assertEquals(found, fault.found());
    boolean silent = answer.isEmpty();
    assertEquals(
        silent, fault.remedy().contains("parity (the bench's file says 8E1)"), fault.remedy());
  }

  @ParameterizedTest
  @CsvSource({
    "11 03 06 AE 41 56 52 43 40 49 AC, the check sum (CRC) of 11 03 06 ae 41 56 52 43 40 49 ac is"
        + " wrong",
    "11 03 06 AE 40 56 52 43 40 49 AD, the check sum (CRC) of 11 03 06 ae 40 56 52 43 40 49 ad is"
        + " wrong",
    "11 03 06 AE 41 56, only 11 03 06 ae 41 56 came within 300 ms",
    "11, only 11 came within 300 ms",
    "12 03 06 AE 41 56 52 43 40 5D 5D, address 18 answers to function 3",
    "11 04 06 AE 41 56 52 43 40 08 4B, address 17 answers to function 4",
    "12 83 02 31 34, address 18 answers",
    "11 03 02 AE 41 C5 D7, 1 registers came"
  })
  void whatDidNotComeWholeIsNoReadingAndTheNextOneIs(String answer, String found) {
    peer.answers = question -> answer;
    InstrumentFault fault = assertThrows(InstrumentFault.class, () -> line.read(ASKED));
    assertInstanceOf(BrokenAnswer.class, fault);
    assertEquals(found, fault.found());
    peer.answers = question -> ANSWER;
    assertArrayEquals(SAID, line.read(ASKED));
  }

  /** A frame carries no number: the answer to one question fits the next. */
  @Test
  void aLateAnswerIsNotTakenForTheNext() {
    peer.answers = question -> "";
    assertThrows(InstrumentFault.class, () -> line.read(ASKED));
    peer.late = "11 03 06 00 00 00 00 00 00 EC B5";
    peer.answers = question -> ANSWER;
    assertArrayEquals(SAID, line.read(ASKED));
  }

  @Test
  void anEchoThatDiffersConfirmsNothing() {
    peer.answers = question -> "11 06 00 01 00 04 DB 59";
    BrokenAnswer fault = assertThrows(BrokenAnswer.class, () -> line.write(1, 3));
    assertEquals("4 at 1 came back", fault.found());
  }

  @Test
  void noChangedAnswerIsTakenForAnother() {
    Random random = new Random(20_261_129);
    byte[] right = hex(ANSWER);
    int understood = 0;
    for (int i = 0; i < 200; i++) {
      byte[] changed = Arrays.copyOf(right, right.length - random.nextInt(2) * random.nextInt(10));
      for (int n = random.nextInt(4); n > 0; n--) {
        changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
      }
      peer.answers = question -> hex(changed);
      try {
        assertArrayEquals(SAID, line.read(ASKED));
        understood++;
      } catch (InstrumentFault stated) {
        assertTrue(!Arrays.equals(changed, right), stated.found());
      }
    }
    assertTrue(understood > 20, understood + " were whole");
  }

  private static byte[] hex(String text) {
    return HexFormat.of().parseHex(text.replace(" ", ""));
  }

  private static String hex(byte[] bytes) {
    return HexFormat.ofDelimiter(" ").withUpperCase().formatHex(bytes);
  }

  /** A line in memory; its time passes only in waiting. */
  private static final class Peer implements Link {
    final List<String> heard = new ArrayList<>();
    final FakeClock clock = new FakeClock();
    Function<String, String> answers = question -> "";
    int chunk = Integer.MAX_VALUE;

    /** Comes when somebody waits for it, at the latest with the next question. */
    String late = "";

    private byte[] waiting = {};

    void say(String bytes) {
      byte[] more = hex(bytes);
      int before = waiting.length;
      waiting = Arrays.copyOf(waiting, before + more.length);
      System.arraycopy(more, 0, waiting, before, more.length);
    }

    @Override
    public String name() {
      return "pipe";
    }

    @Override
    public void write(byte[] bytes, Duration patience) {
      heard.add(hex(bytes));
      say(late);
      late = "";
      say(answers.apply(hex(bytes)));
    }

    @Override
    public int read(byte[] into, Duration patience) {
      if (waiting.length == 0 && !patience.isZero()) {
        say(late);
        late = "";
      }
      if (waiting.length == 0) {
        clock.pause(patience);
        return 0;
      }
      int count = Math.min(chunk, Math.min(into.length, waiting.length));
      System.arraycopy(waiting, 0, into, 0, count);
      waiting = Arrays.copyOfRange(waiting, count, waiting.length);
      return count;
    }

    @Override
    public void close() {}
  }
}
