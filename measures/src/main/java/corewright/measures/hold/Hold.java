package corewright.measures.hold;

/**
 * A stretch of constant load.
 *
 * @param start_s middle of the edge that begins it, 0 for the first, s from the first sample
 * @param end_s where the next begins, or the end of the record
 * @param edge whether a load edge begins it
 * @param pulses how often the load left its level in between for less than a hold
 */
public record Hold(double start_s, double end_s, boolean edge, int pulses) {
  public double length_s() {
    return end_s - start_s;
  }
}
