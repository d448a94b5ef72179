package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.fixtures.describe.Descriptions;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The conversation with an instrument, against a peer that answers as IEEE 488.2 and SCPI-1999 say
 * (*OPC? gives 1; an empty error queue gives 0,"No error"), or does not.
 */
class ScpiSessionTest {
  private static final String NONE = "0,\"No error\"\n";

  private final ScriptedPeer peer = new ScriptedPeer("\n", ScpiSessionTest::works);
  private final ScpiSession session =
      new ScpiSession("source", peer, Descriptions.shippedDialect("emulated-source"), peer.clock);

  private static String works(String message) {
    return switch (message) {
      case "*IDN?" -> "COREWRIGHT,EMULATED-SOURCE,1,1.0\n";
      case "SYSTem:ERRor?" -> NONE;
      case "MEASure:VOLTage?" -> "1.25E+01\n";
      case "OUTPut?" -> "1\n";
      default -> message.endsWith(";*OPC?") ? "1\n" : "";
    };
  }

  private InstrumentFault fault(Runnable action) {
    InstrumentFault fault = assertThrows(InstrumentFault.class, action::run);
    assertEquals("source", fault.instrument());
    assertTrue(fault.doing().endsWith(" on pipe") || fault.doing().equals("set"), fault.doing());
    assertFalse(fault.remedy().isEmpty());
    return fault;
  }

  private void set() {
    session.act("set", Map.of("voltage_V", 12.5, "limit_A", 2.0));
  }

  @Test
  void aCommandIsConfirmedAndTheErrorQueueRead() {
    set();
    assertEquals(List.of("VOLTage 12.500;CURRent 2.000;*OPC?", "SYSTem:ERRor?"), peer.heard);
  }

  @Test
  void anErrorIsToldInTheInstrumentsWordsAndTheQueueIsEmptied() {
    List<String> queue =
        new java.util.ArrayList<>(
            List.of("-222,\"Data out of range\"\n", "-200,\"Execution error\"\n"));
    peer.answers(m -> m.equals("SYSTem:ERRor?") && !queue.isEmpty() ? queue.remove(0) : works(m));
    assertEquals(
        "refused with -222,\"Data out of range\" and -200,\"Execution error\"",
        fault(this::set).found());
    set(); // nothing of it is left
  }

  @Test
  void anErrorQueueThatNeverEmptiesIsLeftAlone() {
    peer.answers(m -> m.equals("SYSTem:ERRor?") ? "-350,\"Queue overflow\"\n" : works(m));
    fault(this::set);
    assertTrue(peer.heard.size() < 100);
  }

  @ParameterizedTest
  @CsvSource({
    "'', no answer within 1000 ms",
    "'1', only '1' and no end of line within 1000 ms",
    "'0\n', the answer '0' is not the confirmation",
    "'\u0007\u00ffx\n', the answer '··x' is not the confirmation"
  })
  void anAnswerThatIsNoneIsToldAsItCame(String answer, String found) {
    peer.answers(m -> m.endsWith(";*OPC?") ? answer : works(m));
    assertEquals(found, fault(this::set).found());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"12,5V\n", "nan\n", "\n", "9.9E37\n", "-9.9E37\n", "9.91E37\n", "1.2.3E+00\n"})
  void whatIsNoNumberIsNotTakenForOne(String answer) {
    // 9.9E37 and 9.91E37 stand for infinity and not a number (SCPI-1999, 7.2.1.4)
    peer.answers(m -> m.equals("MEASure:VOLTage?") ? answer : works(m));
    assertTrue(
        fault(() -> session.number("voltage", corewright.measures.Unit.VOLT))
            .found()
            .endsWith("is not a number in V"));
  }

  @Test
  void aStateThatIsNoneOfItsWordsIsRefused() {
    peer.answers(m -> m.equals("OUTPut?") ? "2\n" : works(m));
    assertTrue(fault(() -> session.state("output")).found().contains("'2' is not one of"));
    peer.answers(ScpiSessionTest::works);
    assertTrue(session.state("output"));
  }

  @Test
  void whatNobodyAskedForIsNotTakenForTheAnswer() {
    peer.say("99\nstale");
    assertEquals(12.5, session.number("voltage", corewright.measures.Unit.VOLT).value());
  }

  @Test
  void anAnswerThatComesTooLateIsNotTakenForTheNextOne() {
    peer.answers(m -> m.equals("MEASure:VOLTage?") ? "" : works(m));
    fault(() -> session.number("voltage", corewright.measures.Unit.VOLT));
    peer.answers(ScpiSessionTest::works);
    peer.say("7.77E+00\n"); // now
    assertTrue(session.state("output"), "not 7.77");
    assertTrue(
        peer.heard.indexOf("SYSTem:ERRor?") > 0,
        "the error of the interrupted query (-410) was taken out first");
  }

  @Test
  void aLineThatNeverStopsTalkingIsAFaultAndNoHang() {
    peer.answers(m -> "x".repeat(5000));
    assertEquals("5000 bytes without an end of line", fault(this::set).found());
    peer.answers(m -> "y".repeat(2_000_000));
    fault(this::set);
  }

  @Test
  void oneByteEachTimeJustBeforePatienceEndsDoesNotMakeItEndless() {
    ScriptedPeer slow =
        new ScriptedPeer("\n", m -> "1".repeat(3000)) {
          @Override
          public int read(byte[] into, Duration patience) {
            if (!patience.isZero()) {
              clock.pause(Duration.ofMillis(900));
            }
            return super.read(into, patience);
          }
        };
    slow.chunk = 1;
    ScpiSession patient =
        new ScpiSession("source", slow, Descriptions.shippedDialect("emulated-source"), slow.clock);
    assertThrows(InstrumentFault.class, patient::identity);
    assertTrue(slow.clock.nanos() < 3_000_000_000L);
  }

  @Test
  void aStrangerIsRefusedByName() {
    peer.answers(m -> "OTHER WORKS,MODEL 1,0,0\n");
    assertEquals(
        "'OTHER WORKS,MODEL 1,0,0' answers, which dialect emulated-source is not for",
        fault(session::identity).found());
  }

  @Test
  void offGoesOutEvenWhenTheConversationIsOutOfStep() {
    peer.answers(m -> "");
    fault(() -> session.number("voltage", corewright.measures.Unit.VOLT));
    peer.heard.clear();
    fault(session::off);
    assertEquals(
        List.of(
            "OUTPut OFF;:VOLTage 0;:FUNCtion DC;*OPC?", "OUTPut OFF;:VOLTage 0;:FUNCtion DC;*OPC?"),
        peer.heard,
        "said twice to an instrument that does not answer");
  }

  @Test
  void anOldErrorDoesNotMakeOffFail() {
    List<String> queue = new java.util.ArrayList<>(List.of("-410,\"Query INTERRUPTED\"\n"));
    peer.answers(m -> m.equals("SYSTem:ERRor?") && !queue.isEmpty() ? queue.remove(0) : works(m));
    session.off();
    assertEquals("OUTPut OFF;:VOLTage 0;:FUNCtion DC;*OPC?", peer.heard.get(0));
  }

  @Test
  void closingNeverThrows() {
    peer.answers(m -> "");
    session.close();
    assertTrue(peer.closed);
  }
}
