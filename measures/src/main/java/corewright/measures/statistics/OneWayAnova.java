package corewright.measures.statistics;

import java.util.List;
import org.apache.commons.math3.distribution.FDistribution;

/**
 * Whether groups differ by more than the scatter within them.
 *
 * @param betweenSquares sum of squares of the group means about the grand mean
 * @param betweenFreedom groups − 1
 * @param withinSquares sum of squares within groups
 * @param withinFreedom values − groups
 * @see "NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3"
 */
public record OneWayAnova(
    double betweenSquares, int betweenFreedom, double withinSquares, int withinFreedom) {

  /**
   * @param groups at least two, none empty, more values than groups
   */
  public static OneWayAnova of(List<double[]> groups) {
    int n = 0;
    PreciseSum total = new PreciseSum();
    for (double[] group : groups) {
      if (group.length == 0) {
        throw new IllegalArgumentException("a group is empty");
      }
      n += group.length;
      for (double value : group) {
        total.add(value);
      }
    }
    if (groups.size() < 2 || n <= groups.size()) {
      throw new IllegalArgumentException(
          "at least 2 groups and more values than groups are needed: "
              + groups.size()
              + " groups, "
              + n
              + " values");
    }
    // Everything is taken as a difference from this one number, so that what it rounds away is gone
    // from both sums.
    double reference = total.value() / n;
    double[] effects = new double[groups.size()];
    PreciseSum all = new PreciseSum();
    PreciseSum within = new PreciseSum();
    for (int g = 0; g < effects.length; g++) {
      double[] group = groups.get(g);
      PreciseSum sum = new PreciseSum();
      for (double value : group) {
        sum.add(value - reference);
      }
      effects[g] = sum.value() / group.length;
      all.add(sum.value());
      for (double value : group) {
        double d = value - reference - effects[g];
        within.addProduct(d, d);
      }
    }
    double grand = all.value() / n;
    PreciseSum between = new PreciseSum();
    for (int g = 0; g < effects.length; g++) {
      double d = effects[g] - grand;
      between.addProduct(groups.get(g).length * d, d);
    }
    return new OneWayAnova(between.value(), groups.size() - 1, within.value(), n - groups.size());
  }

  /** Variance ratio; infinite where the groups have no scatter. */
  public double f() {
    return (betweenSquares / betweenFreedom) / (withinSquares / withinFreedom);
  }

  /** Probability of a ratio this large if the groups were alike. */
  public double p() {
    FDistribution alike = new FDistribution(null, betweenFreedom, withinFreedom);
    return 1 - alike.cumulativeProbability(f());
  }

  /** Standard deviation within groups. */
  public double residualSd() {
    return Math.sqrt(withinSquares / withinFreedom);
  }

  public double rSquared() {
    return betweenSquares / (betweenSquares + withinSquares);
  }
}
