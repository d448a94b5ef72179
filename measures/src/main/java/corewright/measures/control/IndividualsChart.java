package corewright.measures.control;

import corewright.measures.statistics.PreciseSum;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Chart of single values, limits from the mean moving range of a time when all was well.
 *
 * <p>The moving range sees only what changes from one value to the next: a drift in the baseline
 * does not widen the limits, correlated values make them too narrow.
 *
 * @param centre mean of the baseline
 * @param meanMovingRange of neighbours in the baseline
 * @see "NIST/SEMATECH e-Handbook 6.3.2.2"
 */
public record IndividualsChart(double centre, double meanMovingRange) {
  /** Limits from fewer values are guesses. */
  public static final int LEAST_BASELINE = 10;

  private static final ChartConstants OF_TWO = ChartConstants.of(2);

  /**
   * @throws IllegalArgumentException if the baseline has fewer than {@link #LEAST_BASELINE} values
   *     or never changes
   */
  public static IndividualsChart of(double... baseline) {
    if (baseline.length < LEAST_BASELINE) {
      throw new IllegalArgumentException(
          "control limits need at least "
              + LEAST_BASELINE
              + " values, there are "
              + baseline.length);
    }
    PreciseSum ranges = new PreciseSum();
    for (int i = 1; i < baseline.length; i++) {
      ranges.add(Math.abs(baseline[i] - baseline[i - 1]));
    }
    double range = ranges.value() / (baseline.length - 1);
    if (!(range > 0) || Double.isInfinite(range)) {
      throw new IllegalArgumentException(
          "the baseline has a mean moving range of " + range + ": no limits can be drawn");
    }
    return new IndividualsChart(PreciseSum.of(baseline) / baseline.length, range);
  }

  /** Standard deviation from one value to the next. */
  public double sd() {
    return meanMovingRange / OF_TWO.d2();
  }

  public double lowerLimit() {
    return centre - 3 * sd();
  }

  public double upperLimit() {
    return centre + 3 * sd();
  }

  /** Upper limit of the chart of moving ranges; the lower one is 0. */
  public double movingRangeLimit() {
    return OF_TWO.upperRange() * meanMovingRange;
  }

  /**
   * A rule broken by a point.
   *
   * @param index of the point that completes the run
   * @param rule that is broken
   */
  public record Signal(int index, RunRule rule) {}

  /** Every rule of the Western Electric handbook that every point breaks, in order. */
  public List<Signal> signals(double... values) {
    return signals(RunRule.HANDBOOK, values);
  }

  /** Every one of these rules that every point breaks, in order. */
  public List<Signal> signals(Set<RunRule> rules, double... values) {
    double[] z = new double[values.length];
    List<Signal> signals = new ArrayList<>();
    for (int i = 0; i < z.length; i++) {
      z[i] = (values[i] - centre) / sd();
      for (RunRule rule : rules) {
        if (rule.brokenAt(z, i)) {
          signals.add(new Signal(i, rule));
        }
      }
    }
    return signals;
  }
}
