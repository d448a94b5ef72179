package corewright.bench.wire;

import corewright.bench.port.Source;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Map;
import java.util.Optional;

/** A DC source that speaks a dialect. */
final class ScpiSource extends ScpiInstrument implements Source {

  ScpiSource(String role, ScpiSession session) {
    super(role, session);
  }

  @Override
  public void protect(double over_V, double over_A) {
    session.act("protect", Map.of("over_V", over_V, "over_A", over_A));
  }

  @Override
  public void set(double voltage_V, double limit_A) {
    session.act("set", Map.of("voltage_V", voltage_V, "limit_A", limit_A));
  }

  @Override
  public void output(boolean on) {
    session.act("output", Map.of("on", on));
  }

  @Override
  public boolean canSwing() {
    return session.dialect().can("swing");
  }

  @Override
  public void swing(Swing s) {
    session.act(
        "swing",
        Map.of(
            "low_V", s.low_V(),
            "high_V", s.high_V(),
            "swing_Vpp", s.swing_Vpp(),
            "amplitude_V", s.swing_Vpp() / 2,
            "rate_Hz", s.rate_Hz(),
            "period_s", 1 / s.rate_Hz()));
  }

  @Override
  public void steady() {
    session.act("steady", Map.of());
  }

  @Override
  public Optional<Boolean> isOn() {
    return session.canAsk("output") ? Optional.of(session.state("output")) : Optional.empty();
  }

  @Override
  public Measurement voltage() {
    return session.number("voltage", Unit.VOLT);
  }

  @Override
  public Measurement current() {
    return session.number("current", Unit.AMPERE);
  }
}
