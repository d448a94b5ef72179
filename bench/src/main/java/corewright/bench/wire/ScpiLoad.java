package corewright.bench.wire;

import corewright.bench.port.Load;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Map;

/** An electronic load that speaks a dialect. */
final class ScpiLoad extends ScpiInstrument implements Load {
  private static final double PERCENT = 100;

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
  public boolean canPulse() {
    return session.dialect().can("pulse");
  }

  @Override
  public void pulse(Pulses p) {
    session.act(
        "pulse",
        Map.of(
            "low_A", p.low_A(),
            "high_A", p.high_A(),
            "width_s", p.width_s(),
            "duty_percent", PERCENT * p.width_s() / p.period_s(),
            "period_s", p.period_s(),
            "rate_Hz", 1 / p.period_s(),
            "count", (double) p.count()));
  }

  @Override
  public void steady() {
    session.act("steady", Map.of());
  }

  @Override
  public Measurement current() {
    return session.number("current", Unit.AMPERE);
  }
}
