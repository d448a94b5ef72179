package corewright.bench.commission;

import java.util.Comparator;
import java.util.List;

/**
 * From the first sample that shows a fault to the first after which nothing flows any more.
 *
 * @param seconds by the digitizer's count
 * @param resolution_s how far it can be told: two samples
 */
public record TripTime(double seconds, double resolution_s) {

  /** The most that it can have been, s. */
  public double most_s() {
    return seconds + resolution_s;
  }

  /** The slowest of several. */
  public static TripTime worst(List<TripTime> times) {
    return times.stream().max(Comparator.comparingDouble(TripTime::most_s)).orElseThrow();
  }

  /**
   * The share of all trips that may be slower than the worst of so many, with 95 % confidence: of n
   * that are all faster, pⁿ = 0.05.
   *
   * @see "Hahn and Meeker, Statistical Intervals, 1991: one-sided distribution-free bound"
   */
  public static double slowerShare(int trials) {
    return 1 - Math.pow(0.05, 1.0 / trials);
  }
}
