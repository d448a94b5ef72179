package corewright.bench.wire;

import corewright.bench.port.Thermometer;
import corewright.measures.Measurement;
import corewright.measures.Unit;

/** A thermometer that speaks a dialect. */
final class ScpiThermometer extends ScpiInstrument implements Thermometer {

  ScpiThermometer(String role, ScpiSession session) {
    super(role, session);
  }

  @Override
  public Measurement temperature() {
    return session.number("temperature", Unit.CELSIUS);
  }
}
