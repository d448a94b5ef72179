package corewright.measures.pulse;

import java.util.OptionalDouble;

/**
 * A step from one level to another, up or down. Instants are found between two samples by a
 * straight line and counted from the first sample, s.
 *
 * @see "IEC 60469:2013 = IEEE 181: reference level instants, transition duration, overshoot,
 *     settling (definitions from memory)"
 */
public final class Transition {
  private final double[] share; // of the way from the one level to the other
  private final double sampleRate_Hz;
  private final double t10;
  private final double t50;
  private final double t90;

  private Transition(double[] share, double rate, double t10, double t50, double t90) {
    this.share = share;
    this.sampleRate_Hz = rate;
    this.t10 = t10;
    this.t50 = t50;
    this.t90 = t90;
  }

  /**
   * The first transition of the record.
   *
   * @param from level before, from which the record sets out
   * @param to level after
   * @throws IllegalArgumentException if the record does not cross from 10 % to 90 %
   */
  public static Transition of(double[] x, double sampleRate_Hz, double from, double to) {
    if (from == to) {
      throw new IllegalArgumentException("a transition is between two levels, both are " + to);
    }
    double[] share = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      share[i] = (x[i] - from) / (to - from);
    }
    double[] instants = new double[3];
    double[] levels = {0.1, 0.5, 0.9};
    for (int k = 0; k < 3; k++) {
      instants[k] = crossing(share, levels[k]) / sampleRate_Hz;
    }
    return new Transition(share, sampleRate_Hz, instants[0], instants[1], instants[2]);
  }

  private static double crossing(double[] share, double level) {
    for (int i = 1; i < share.length; i++) {
      if (share[i - 1] < level && share[i] >= level) {
        return i - 1 + (level - share[i - 1]) / (share[i] - share[i - 1]);
      }
    }
    throw new IllegalArgumentException(
        "the record does not cross "
            + Math.round(100 * level)
            + " % of the way between the levels");
  }

  public double t10_s() {
    return t10;
  }

  /** The reference instant of the step. */
  public double t50_s() {
    return t50;
  }

  public double t90_s() {
    return t90;
  }

  /** Rise or fall time, 10 % to 90 %. */
  public double duration_s() {
    return t90 - t10;
  }

  /** How far the record goes beyond the level after, % of the step; at least 0. */
  public double overshootPercent() {
    double most = 1;
    for (double s : share) {
      most = Math.max(most, s);
    }
    return 100 * (most - 1);
  }

  /** How far it goes the wrong way before the step, % of the step; at least 0. */
  public double preshootPercent() {
    double least = 0;
    for (int i = 0; i < t10 * sampleRate_Hz; i++) {
      least = Math.min(least, share[i]);
    }
    return -100 * least;
  }

  /**
   * From {@link #t50_s} until the record stays within a band about the level after; empty if it
   * ends outside.
   *
   * @param percent half-width of the band, % of the step, above 0 and below 90
   */
  public OptionalDouble settling_s(double percent) {
    if (!(percent > 0 && percent < 90)) {
      throw new IllegalArgumentException(
          "a settling band is above 0 and below 90 % of the step, not " + percent + " %");
    }
    double band = percent / 100;
    int last = share.length - 1;
    if (Math.abs(share[last] - 1) > band) {
      return OptionalDouble.empty();
    }
    while (Math.abs(share[last] - 1) <= band) {
      last--;
    }
    double edge = share[last] > 1 ? 1 + band : 1 - band;
    double into = (edge - share[last]) / (share[last + 1] - share[last]);
    return OptionalDouble.of((last + into) / sampleRate_Hz - t50);
  }
}
