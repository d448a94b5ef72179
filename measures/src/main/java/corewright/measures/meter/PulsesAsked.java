package corewright.measures.meter;

/**
 * What a load was told to do: from one level to another and back, again and again.
 *
 * @param low_A between the pulses, A
 * @param high_A in a pulse, A
 * @param width_s of a pulse, s
 * @param rate_Hz pulses a second
 */
public record PulsesAsked(double low_A, double high_A, double width_s, double rate_Hz) {

  /** What one pulse takes beyond the level between them, A·s. */
  double charge_As() {
    return (high_A - low_A) * width_s;
  }
}
