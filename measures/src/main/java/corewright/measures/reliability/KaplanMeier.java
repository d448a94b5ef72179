package corewright.measures.reliability;

import corewright.measures.statistics.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Share of units still well over time, without assuming a distribution. A unit suspended at the
 * moment of a failure counts as at risk in it.
 *
 * @param steps one for each moment of failure, in order
 * @see "Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958) 457; Greenwood's variance"
 */
public record KaplanMeier(List<Step> steps) {
  public KaplanMeier {
    steps = List.copyOf(steps);
  }

  /**
   * The curve falls.
   *
   * @param time of the failures
   * @param atRisk units that had lasted until then
   * @param failures of them that failed then
   * @param survival share still well afterwards
   * @param greenwood Σ failures/(atRisk·(atRisk − failures)) so far; infinite once none is left
   */
  public record Step(double time, long atRisk, long failures, double survival, double greenwood) {

    /** Standard error of {@link #survival}. */
    public double standardError() {
      return survival == 0 ? 0 : survival * Math.sqrt(greenwood);
    }

    /**
     * Interval on the scale of ln(−ln(survival)), which never leaves 0 to 1. Where none is left,
     * nothing is known below: 0 to 1.
     */
    public Interval interval(double level) {
      Interval.requireLevel(level);
      if (survival == 0) {
        return new Interval(0, 1, level);
      }
      double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + level) / 2);
      double factor = Math.exp(z * Math.sqrt(greenwood) / Math.log(survival));
      double one = Math.pow(survival, factor);
      double other = Math.pow(survival, 1 / factor);
      return new Interval(Math.min(one, other), Math.max(one, other), level);
    }
  }

  public static KaplanMeier of(List<Lifetime> lifetimes) {
    TreeMap<Double, long[]> byTime = new TreeMap<>();
    long atRisk = 0;
    for (Lifetime life : lifetimes) {
      byTime.computeIfAbsent(life.time(), t -> new long[2])[life.failed() ? 1 : 0] += life.count();
      atRisk += life.count();
    }
    List<Step> steps = new ArrayList<>();
    double survival = 1;
    double greenwood = 0;
    for (var moment : byTime.entrySet()) {
      long suspended = moment.getValue()[0];
      long failed = moment.getValue()[1];
      if (failed > 0) {
        survival *= (double) (atRisk - failed) / atRisk;
        greenwood += failed / ((double) atRisk * (atRisk - failed));
        steps.add(new Step(moment.getKey(), atRisk, failed, survival, greenwood));
      }
      atRisk -= failed + suspended;
    }
    return new KaplanMeier(steps);
  }

  /** Share still well at a time: 1 before the first failure. */
  public double survivalAt(double time) {
    double survival = 1;
    for (Step step : steps) {
      if (step.time() <= time) {
        survival = step.survival();
      }
    }
    return survival;
  }

  /** First moment at which half or fewer are well; empty while more than half are. */
  public OptionalDouble median() {
    return steps.stream().filter(s -> s.survival() <= 0.5).mapToDouble(Step::time).findFirst();
  }
}
