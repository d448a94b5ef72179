package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Arbitrary blocks, as IEEE 488.2-1992 has them in 8.7.9 (definite) and 8.7.10 (indefinite). */
class BlockAnswerTest {

  private static byte[] ask(String answer, int most, int chunk) {
    ScriptedPeer peer = new ScriptedPeer("\n", message -> answer);
    peer.chunk = chunk;
    return new TextLine("digitizer", peer, peer.clock, "\n", "\n", Duration.ofMillis(300))
        .askBlock("FETCh?", most);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7, 100})
  void definiteBlocksAreTakenHoweverTheyArrive(int chunk) {
    assertArrayEquals(bytes("a\nb#"), ask("#14a\nb#\n", 100, chunk));
    assertArrayEquals(bytes("a\nb#"), ask("#3004a\nb#\n", 100, chunk), "leading zeros");
    assertArrayEquals(bytes("\u00ff\u0000"), ask("#12\u00ff\u0000\n", 2, chunk));
    assertArrayEquals(new byte[0], ask("#10\n", 4, chunk));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 100})
  void anIndefiniteBlockEndsWhereItsSamplesDoThoughLineFeedsAreAmongThem(int chunk) {
    assertArrayEquals(bytes("\n\n\n\n"), ask("#0\n\n\n\n\n", 4, chunk));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12,5\\n | does not begin a block",
        "#X4ab\\n | does not begin a block",
        "#1xab\\n | length is said to be 'x'",
        "#3-12ab\\n | length is said to be '-12'",
        "#9999999999ab\\n | length is said to be",
        "#13ab\\n | within 300 ms",
        "#11ab\\n | does not end after 1 bytes",
        "#0abcde\\n | does not end after 4 bytes",
        "#0ab\\n | within 300 ms",
        "#14ab | within 300 ms",
        "'' | no answer within 300 ms",
      })
  void whatIsNoBlockIsAFaultThatSaysWhatCame(String answer, String found) {
    String whole = answer.replace("\\n", "\n");
    InstrumentFault fault = assertThrows(InstrumentFault.class, () -> ask(whole, 4, 100));
    assertTrue(fault.found().contains(found), fault.found());
  }

  @Test
  void aBlockThatWasCutShortIsNotTakenForTheNextOne() {
    ScriptedPeer peer = new ScriptedPeer("\n", message -> "#14abcdefgh\n");
    TextLine line = new TextLine("digitizer", peer, peer.clock, "\n", "\n", Duration.ofMillis(300));
    assertThrows(InstrumentFault.class, () -> line.askBlock("FETCh?", 4));
    peer.answers(message -> "#12xy\n");
    assertArrayEquals(bytes("xy"), line.askBlock("FETCh?", 4));
    assertEquals(2, peer.heard.size());
  }
}
