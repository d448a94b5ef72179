package corewright.profiles;

import corewright.measures.Quantity;
import java.util.Locale;
import java.util.Set;

/**
 * Rates of the load's pulses below the rated one: what the unit meets while the engine is cranked,
 * and idling. A converter with a tenth of its power left still carries the one and not the other
 * (common practice, no source).
 */
public enum SlowPulses {
  CRANKING(Quantity.PULSED_OUTPUT_CRANKING, Quantity.PULSED_DIP_CRANKING),
  IDLE(Quantity.PULSED_OUTPUT_IDLE, Quantity.PULSED_DIP_IDLE);

  private final Quantity output;
  private final Quantity dip;

  SlowPulses(Quantity output, Quantity dip) {
    this.output = output;
    this.dip = dip;
  }

  /** The mean of the output at this rate. */
  public Quantity output() {
    return output;
  }

  /** The dip per pulse at this rate. */
  public Quantity dip() {
    return dip;
  }

  Set<Quantity> yields() {
    return Set.of(output, dip);
  }

  /** The key of a step in JSON that asks for it. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
