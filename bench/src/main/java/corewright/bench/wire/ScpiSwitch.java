package corewright.bench.wire;

import corewright.bench.port.Switch;
import java.util.Map;

/** A discharge switch that speaks a dialect. */
final class ScpiSwitch extends ScpiInstrument implements Switch {

  ScpiSwitch(String role, ScpiSession session) {
    super(role, session);
  }

  @Override
  public void discharge(boolean connected) {
    session.act("discharge", Map.of("connected", connected));
  }

  @Override
  public boolean discharging() {
    return session.state("discharging");
  }
}
