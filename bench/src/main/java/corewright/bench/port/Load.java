package corewright.bench.port;

import corewright.measures.Measurement;

/** An electronic load in constant-current mode, as the engine sees it: amperes, no commands. */
public interface Load extends Instrument {

  /** Sets the current; the input stays on or off as it is. */
  void set(double current_A);

  /** Connects or disconnects the load's input. */
  void input(boolean on);

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
