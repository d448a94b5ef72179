package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An instrument that no code knows: everything about it stands in a file. */
class StrangeDialectTest {
  private static final String END = "#\r\n";

  private final ScriptedPeer peer = new ScriptedPeer("\r", StrangeDialectTest::works);
  private ScpiLoad load;

  @BeforeEach
  void open() {
    load = new ScpiLoad("load", new ScpiSession("load", peer, dialect(), peer.clock));
  }

  /** As its (invented) manual says. */
  private static String works(String message) {
    return switch (message) {
      case "*IDN?" -> "STRANGE WORKS;LAST 7;0042" + END;
      case "WHAT WENT WRONG" -> "NOTHING" + END;
      case "STROM?" -> "I = -1234,5 mA" + END;
      default -> message.endsWith(" / READY?") ? "JAWOHL" + END : "";
    };
  }

  @Test
  void itIsSpokenToInItsOwnWords() {
    assertEquals("STRANGE WORKS;LAST 7;0042", load.identity());
    load.set(1.25);
    load.input(true);
    load.off();
    load.close();
    assertEquals(
        List.of(
            "*IDN?",
            "STROM=1250,0 mA / READY?",
            "WHAT WENT WRONG",
            "EINGANG EIN / READY?",
            "WHAT WENT WRONG",
            "EINGANG AUS / READY?",
            "WHAT WENT WRONG",
            "STROM=0,0 mA / READY?",
            "WHAT WENT WRONG",
            "REMOTE OFF / READY?",
            "WHAT WENT WRONG"),
        peer.heard);
    assertTrue(peer.closed);
  }

  /**
   * Its input does not obey; its current may still be taken back, and the input is what is told.
   */
  @Test
  void whatOneMessageOfOffCannotDoTheNextIsStillTold() {
    peer.answers(m -> m.startsWith("EINGANG AUS") ? "" : works(m));
    InstrumentFault told = assertThrows(InstrumentFault.class, load::off);
    assertTrue(told.doing().startsWith("'EINGANG AUS"), told.getMessage());
    assertEquals(1, peer.heard.stream().filter("STROM=0,0 mA / READY?"::equals).count());
    assertEquals(2, peer.heard.stream().filter(m -> m.startsWith("EINGANG AUS")).count());
  }

  @Test
  void whatItSaysIsReadWithItsUncertainty() {
    Measurement current = load.current();
    assertEquals(-1.2345, current.value(), 1e-12);
    assertEquals(Math.hypot(0.0012345, 0.002), current.u(), 1e-12);
    assertEquals(Unit.AMPERE, current.unit());
  }

  @Test
  void aLevelOutsideItsRangeIsRefusedBeforeAnythingIsSent() {
    InstrumentFault fault = assertThrows(InstrumentFault.class, () -> load.set(12.6));
    assertTrue(fault.getMessage().contains("12.6"), fault.getMessage());
    assertEquals(List.of(), peer.heard);
  }

  @Test
  void whatItRefusesIsToldInItsWords() {
    peer.answers(
        message ->
            message.equals("WHAT WENT WRONG") && peer.heard.size() == 2
                ? "ZU VIEL STROM" + END
                : works(message));
    InstrumentFault fault = assertThrows(InstrumentFault.class, () -> load.set(5));
    assertEquals("refused with ZU VIEL STROM", fault.found());
    assertEquals("load", fault.instrument());
  }

  private static Dialect dialect() {
    try {
      return Descriptions.dialect(
          Path.of(StrangeDialectTest.class.getResource("strange-load.json").toURI()));
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void everyPartOfTheAnswerMayComeByItself() {
    peer.chunk = 1;
    assertEquals(-1.2345, load.current().value(), 1e-12);
  }
}
