package corewright.bench.wire;

import corewright.bench.port.Digitizer.Status;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Relay;
import corewright.bench.port.Switch;
import java.util.Map;
import java.util.Optional;

/** A relay box that speaks a dialect. Whether the discharge is connected, its switch says. */
final class ScpiRelay extends ScpiInstrument implements Relay {
  private final Switch discharge;
  private Status heard = new Status(false, false, false, false, false, false);

  ScpiRelay(String role, ScpiSession session, Switch discharge) {
    super(role, session);
    this.discharge = discharge;
  }

  @Override
  public Optional<String> fixture() {
    return Optional.empty();
  }

  @Override
  public void relay(boolean closed) {
    session.act("relay", Map.of("closed", closed));
    if (heartbeat().relayClosed() != closed) {
      throw other(closed, "Close the cover, release the stop button and have the relay checked.");
    }
  }

  /** That the command was taken does not open a contact that has welded. */
  @Override
  public void off() {
    super.off();
    if (session.state("closed")) {
      throw other(false, "Switch the source off by hand, pull its plug, and replace the relay.");
    }
  }

  private InstrumentFault other(boolean closed, String remedy) {
    return new InstrumentFault(
        role(),
        closed ? "closing the relay" : "opening the relay",
        "it says that it is " + (closed ? "open" : "closed") + " after it was told",
        remedy);
  }

  @Override
  public Status heartbeat() {
    heard =
        new Status(
            session.state("whole"),
            session.state("closed"),
            discharge.discharging(),
            false,
            false,
            session.state("tripped"));
    return heard;
  }

  /** What the last heartbeat brought. */
  Status heard() {
    return heard;
  }
}
