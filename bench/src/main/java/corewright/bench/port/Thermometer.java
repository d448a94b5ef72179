package corewright.bench.port;

import corewright.measures.Measurement;

/** Reads the temperature of the unit's case. Most benches have none. */
public interface Thermometer extends Instrument {

  /** Temperature of the case, °C. */
  Measurement temperature();
}
