package corewright.bench.wire;

import corewright.bench.port.Meter;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Map;
import java.util.Optional;

/** A meter that speaks a dialect. */
final class ScpiMeter extends ScpiInstrument implements Meter {

  ScpiMeter(String role, ScpiSession session) {
    super(role, session);
  }

  @Override
  public void to(Terminals terminals) {
    session.act(terminals == Terminals.INPUT ? "toInput" : "toOutput", Map.of());
  }

  @Override
  public Measurement voltage() {
    return session.number("voltage", Unit.VOLT);
  }

  @Override
  public Optional<Measurement> resistance() {
    return session.numberInRange("resistance", Unit.OHM);
  }

  @Override
  public Optional<Measurement> diode() {
    return session.canAsk("diode") ? session.numberInRange("diode", Unit.VOLT) : Optional.empty();
  }
}
