package corewright.bench.port;

import corewright.measures.Measurement;
import java.util.Optional;

/**
 * A bench meter whose leads are switched between the unit's terminals: it looks for shorts before
 * power, and says whether the digitizer's channels are to be believed. Most benches have none.
 */
public interface Meter extends Instrument {

  /** Which of the unit's terminals its leads are on. */
  enum Terminals {
    INPUT,
    OUTPUT
  }

  /** Switches the leads. */
  void to(Terminals terminals);

  /** DC voltage between its leads, V. */
  Measurement voltage();

  /**
   * Resistance between its leads, Ω; empty if it is more than the range reaches. Only asked while
   * nothing is powered.
   */
  Optional<Measurement> resistance();

  /** Voltage at the meter's diode current, V; empty beyond its range, or if it has no such test. */
  Optional<Measurement> diode();
}
