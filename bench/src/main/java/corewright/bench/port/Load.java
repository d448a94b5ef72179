package corewright.bench.port;

import corewright.measures.Measurement;

/** An electronic load in constant-current mode, as the engine sees it: amperes, no commands. */
public interface Load extends Instrument {

  /** Sets the current; the input stays on or off as it is. */
  void set(double current_A);

  /** Connects or disconnects the load's input. */
  void input(boolean on);

  /**
   * What a load does by itself, again and again.
   *
   * @param low_A between the pulses
   * @param high_A in a pulse
   * @param width_s of a pulse
   * @param period_s from one to the next
   * @param count how many at most, for a load that must be told
   */
  record Pulses(double low_A, double high_A, double width_s, double period_s, int count) {}

  /** Whether it can go from one level to another and back by itself. */
  default boolean canPulse() {
    return false;
  }

  /**
   * Makes it pulse; the input stays on or off as it is.
   *
   * @throws InstrumentFault if it cannot; see {@link #canPulse}
   */
  default void pulse(Pulses pulses) {
    throw new InstrumentFault(
        role(), "making it pulse", "it cannot", "Use a load that pulses by itself.");
  }

  /** A constant load again. */
  default void steady() {}

  /** A person sets it when asked, and the measured current proves it. */
  default boolean isSetByHand() {
    return false;
  }

  /** Current at the load's own terminals. */
  Measurement current();

  /** No current, input off. Idempotent; called on every way out of a run. */
  @Override
  void off();
}
