package corewright.bench.port;

import corewright.measures.Measurement;

/** A programmable DC source as the engine sees it. */
public interface Source extends Instrument {

  /** Programs the instrument's own protection; called before any output is switched on. */
  void protect(double over_V, double over_A);

  /** Sets voltage and current limit; the output stays on or off as it is. */
  void set(double voltage_V, double limit_A);

  /** Switches the output. */
  void output(boolean on);

  /** Voltage at its sense terminals. */
  Measurement voltage();

  /** Current it delivers. */
  Measurement current();
}
