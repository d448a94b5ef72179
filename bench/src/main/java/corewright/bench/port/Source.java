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

  /**
   * What a source does by itself: a sine on its level.
   *
   * @param level_V its middle
   * @param swing_Vpp from the lowest to the highest
   * @param rate_Hz how often it goes up and down in a second
   */
  record Swing(double level_V, double swing_Vpp, double rate_Hz) {
    public double low_V() {
      return level_V - swing_Vpp / 2;
    }

    public double high_V() {
      return level_V + swing_Vpp / 2;
    }
  }

  /** Whether it can put a sine on its level by itself. */
  default boolean canSwing() {
    return false;
  }

  /**
   * Puts a sine on the level; the output stays on or off as it is.
   *
   * @throws InstrumentFault if it cannot; see {@link #canSwing}
   */
  default void swing(Swing swing) {
    throw new InstrumentFault(
        role(), "making it swing", "it cannot", "Use a source that puts a sine on its level.");
  }

  /** At its level again. */
  default void steady() {}

  /** Whether its output is on, as it says itself; empty for a source that cannot say. */
  Optional<Boolean> isOn();

  /** Voltage at its sense terminals. */
  Measurement voltage();

  /** Current it delivers. */
  Measurement current();
}
