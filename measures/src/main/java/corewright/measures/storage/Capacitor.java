package corewright.measures.storage;

import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.measures.trend.Relaxation;
import corewright.measures.uncertainty.Budget;
import corewright.measures.uncertainty.Input;
import corewright.measures.uncertainty.Inputs;

/** A capacitance and what follows from it. */
public final class Capacitor {
  private Capacitor() {}

  /** C = τ/R, from a discharge through a known resistance. */
  public static Budget fromDecay(Relaxation decay, Measurement resistance) {
    Inputs inputs =
        Inputs.independent(
            Input.known("time constant", decay.tau_s(), decay.uTau_s(), Unit.SECOND),
            Input.known("resistance", resistance.value(), resistance.u(), Unit.OHM));
    return Budget.of(x -> x[0] / x[1], Unit.FARAD, inputs);
  }

  /** E = C·V²/2. */
  public static Budget energy(Measurement capacitance, Measurement voltage) {
    Inputs inputs =
        Inputs.independent(
            Input.known("capacitance", capacitance.value(), capacitance.u(), Unit.FARAD),
            Input.known("voltage", voltage.value(), voltage.u(), Unit.VOLT));
    return Budget.of(x -> x[0] * x[1] * x[1] / 2, Unit.JOULE, inputs);
  }

  /**
   * How long a discharge through a resistor takes, s: t = R·C·ln(from/to).
   *
   * @param to_V above 0, not above {@code from_V}; an exponential never reaches 0
   */
  public static double dischargeTime_s(
      double capacitance_F, double resistance_ohm, double from_V, double to_V) {
    if (!(to_V > 0) || !(from_V >= to_V)) {
      throw new IllegalArgumentException(
          "a discharge goes from a voltage to a lower one above 0: " + from_V + " V to " + to_V);
    }
    return resistance_ohm * capacitance_F * Math.log(from_V / to_V);
  }
}
