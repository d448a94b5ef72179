package corewright.bench.port;

import corewright.measures.Measurement;
import java.util.Optional;

/** A programmable DC source as the engine sees it. */
public interface Source extends Instrument {

  /** Programs the instrument's own protection; called before any output is switched on. */
  void protect(double over_V, double over_A);

  /** Sets voltage and current limit; the output stays on or off as it is. */
  void set(double voltage_V, double limit_A);

  /** Switches the output. */
  void output(boolean on);

  /** Whether its output is on, as it says itself; empty for a source that cannot say. */
  Optional<Boolean> isOn();

  /** Voltage at its sense terminals. */
  Measurement voltage();

  /** Current it delivers. */
  Measurement current();
}
