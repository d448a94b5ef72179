package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Switch;
import corewright.fixtures.describe.Descriptions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A relay box whose contact does as it is told, or has welded and says so. */
class ScpiRelayTest {
  private boolean closed;
  private boolean welded;
  private final ScriptedPeer peer = new ScriptedPeer("\n", this::box);
  private final ScpiRelay relay =
      new ScpiRelay(
          "relay",
          new ScpiSession("relay", peer, Descriptions.shippedDialect("emulated-relay"), peer.clock),
          new NoSwitch());

  private String box(String message) {
    if (message.startsWith("ROUTe:CLOSe (@1)") || message.startsWith("ROUTe:OPEN (@1)")) {
      closed = welded || message.startsWith("ROUTe:CLOSe");
      return "1\n";
    }
    return switch (message) {
      case "SYSTem:ERRor?" -> "0,\"No error\"\n";
      case "ROUTe:CLOSe? (@1)" -> closed ? "1\n" : "0\n";
      case "SENSe:CHAin?" -> "1\n";
      case "WATChdog:TRIPped?" -> "0\n";
      default -> "";
    };
  }

  /** What opens the feed for the safe state must not take a confirmed command for an open relay. */
  @Test
  void aContactThatHasWeldedIsNotOff() {
    relay.relay(true);
    relay.off();
    assertEquals(
        List.of("ROUTe:CLOSe? (@1)"), peer.heard.subList(peer.heard.size() - 1, peer.heard.size()));
    welded = true;
    relay.relay(true);
    InstrumentFault fault = assertThrows(InstrumentFault.class, relay::off);
    assertEquals("it says that it is closed after it was told", fault.found());
    assertEquals(
        "Switch the source off by hand, pull its plug, and replace the relay.", fault.remedy());
  }

  private static final class NoSwitch implements Switch {
    @Override
    public String role() {
      return "switch";
    }

    @Override
    public String identity() {
      return "";
    }

    @Override
    public void discharge(boolean on) {}

    @Override
    public boolean discharging() {
      return true;
    }

    @Override
    public void off() {}

    @Override
    public void close() {}
  }
}
