package corewright.bench.wire;

import corewright.bench.port.Load;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Map;

/** An electronic load that speaks a dialect. */
final class ScpiLoad extends ScpiInstrument implements Load {

  ScpiLoad(String role, ScpiSession session) {
    super(role, session);
  }

  @Override
  public void set(double current_A) {
    session.act("set", Map.of("current_A", current_A));
  }

  @Override
  public void input(boolean on) {
    session.act("input", Map.of("on", on));
  }

  @Override
  public Measurement current() {
    return session.number("current", Unit.AMPERE);
  }
}
