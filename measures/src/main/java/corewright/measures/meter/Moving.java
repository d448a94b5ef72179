package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.statistics.Descriptive;
import corewright.measures.statistics.LinearFit;
import corewright.measures.trend.Relaxation;
import corewright.measures.trend.Steps;
import corewright.measures.trend.TheilSen;
import corewright.measures.wave.CorrelatedScatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How the output moves during a hold, besides its {@link Drift}: a slope that single excursions do
 * not pull, sudden steps, the time constant of warming up.
 */
final class Moving {
  private static final int MOST_BLOCKS = 300;
  private static final int FEWEST_BLOCKS = 12;

  /** A shorter hold shows settling and no drift, s. */
  private static final double SHORTEST_HOLD_S = 1;

  private static final double S_PER_MIN = 60;
  private static final double LEVEL = 0.95;
  private static final double K = 2;

  /** A converter's own loop settles faster, a housing does not warm up as fast, s. */
  private static final double FASTEST_WARMING_S = 1;

  /** An exponential must leave a quarter of the variance that a straight line does. */
  private static final double BETTER = 0.25;

  /** Blocks between two halves of one step, at most. */
  private static final int SAME_STEP = 4;

  /** Blocks on either side that the levels of a step are taken from. */
  private static final int NEAR = 20;

  private Moving() {}

  static void read(Channel output, Window window, Level level, Readings into) {
    if (window.hold().length_s() < SHORTEST_HOLD_S) {
      into.none(
          "the hold is shorter than 1 s",
          Quantity.DRIFT_ROBUST,
          Quantity.OUTPUT_STEPS,
          Quantity.LARGEST_STEP,
          Quantity.THERMAL_TIME_CONSTANT);
      return;
    }
    Blocks blocks = Blocks.of(output, window.from(), window.to(), MOST_BLOCKS);
    if (blocks.count() < FEWEST_BLOCKS) {
      into.none(
          "the window has fewer than " + FEWEST_BLOCKS + " samples",
          Quantity.DRIFT_ROBUST,
          Quantity.OUTPUT_STEPS,
          Quantity.LARGEST_STEP,
          Quantity.THERMAL_TIME_CONSTANT);
      return;
    }
    into.put(Quantity.DRIFT_ROBUST, robust(output, blocks, level));
    steps(output, blocks, into);
    into.put(Quantity.THERMAL_TIME_CONSTANT, warming(output, blocks));
  }

  private static Measurement robust(Channel output, Blocks blocks, Level level) {
    TheilSen line = TheilSen.of(blocks.times_s(), blocks.mean(), LEVEL);
    double drift = line.slope() * S_PER_MIN;
    double half = (line.interval().high() - line.interval().low()) / 2 * S_PER_MIN;
    double span_s = blocks.count() * blocks.length_s();
    double rise = line.slope() * span_s;
    // The interval supposes independent points; where they are not, it is that much wider.
    double[] left = residuals(line, blocks);
    CorrelatedScatter scatter = CorrelatedScatter.of(i -> left[i], left.length, 2);
    double wider = Math.sqrt(Math.max(1, scatter.count() / scatter.effectiveCount()));
    double hides = output.resolution().left(level.scatter().sd(), rise, blocks.count());
    double hidden = hides * output.resolution().step() / span_s / Math.sqrt(6) * S_PER_MIN;
    double u = Root.of(wider * half / K, hidden, output.doubt().gain_rel() * drift);
    return new Measurement(drift, u, Unit.VOLT_PER_MINUTE);
  }

  private static double[] residuals(TheilSen line, Blocks blocks) {
    double[] times = blocks.times_s();
    double[] mean = blocks.mean();
    double[] left = new double[times.length];
    for (int b = 0; b < left.length; b++) {
      left[b] = mean[b] - line.intercept() - line.slope() * times[b];
    }
    return left;
  }

  private static void steps(Channel output, Blocks blocks, Readings into) {
    double ofOne = output.resolution().ofOne();
    double left = output.resolution().left(blocks.scatter(), 0, NEAR * blocks.size());
    List<Steps.Step> steps = whole(Steps.find(blocks.mean(), ofOne, ofOne * left), blocks.mean());
    into.put(Quantity.OUTPUT_STEPS, Reading.of(steps.size(), 0, Unit.ONE));
    Optional<Steps.Step> largest =
        steps.stream().max(Comparator.comparingDouble(step -> Math.abs(step.size())));
    if (largest.isEmpty()) {
      into.none("the output does not step in this hold", Quantity.LARGEST_STEP);
    } else {
      into.put(Quantity.LARGEST_STEP, output.difference(largest.get().size(), largest.get().u()));
    }
  }

  /** A step inside a block shows as two that follow each other: they are one. */
  private static List<Steps.Step> whole(List<Steps.Step> parts, double[] mean) {
    List<Steps.Step> whole = new ArrayList<>();
    int index = -SAME_STEP - 1;
    for (int k = 0; k < parts.size(); k++) {
      if (parts.get(k).index() - index > SAME_STEP) {
        int next = k + 1 < parts.size() ? parts.get(k + 1).index() : mean.length;
        whole.add(sized(parts.get(k), mean, Math.max(0, index), next));
      }
      index = parts.get(k).index();
    }
    return whole;
  }

  /** From the level before to that after, without the blocks that hold the step itself. */
  private static Steps.Step sized(Steps.Step step, double[] mean, int after, int before) {
    int at = step.index();
    int from = Math.max(after, at - 1 - NEAR);
    int to = Math.min(before > at + 2 * SAME_STEP ? before : mean.length, at + SAME_STEP + NEAR);
    int left = at - 1;
    int right = at + SAME_STEP;
    if (left - from < 2 || to - right < 2) {
      return step; // too near to another one, or to an end
    }
    double[] earlier = Arrays.copyOfRange(mean, from, left);
    double[] later = Arrays.copyOfRange(mean, right, to);
    Descriptive one = Descriptive.of(earlier);
    Descriptive other = Descriptive.of(later);
    double u = Root.of(one.sd() / Math.sqrt(earlier.length), other.sd() / Math.sqrt(later.length));
    return new Steps.Step(at, other.mean() - one.mean(), Math.max(u, step.u() / 2));
  }

  private static Reading warming(Channel output, Blocks blocks) {
    Reading none = Reading.none("the output does not move as something that warms up does");
    Relaxation curve;
    double straight;
    try {
      curve = Relaxation.of(blocks.times_s(), blocks.mean());
      straight = LinearFit.line(blocks.times_s(), blocks.mean()).residualSd();
    } catch (IllegalArgumentException | ArithmeticException noCurve) {
      return none; // a level that does not move, or no end in sight
    }
    double span_s = blocks.count() * blocks.length_s();
    double residual = Math.max(curve.residualSd(), output.resolution().ofOne() / 10);
    boolean bent = residual * residual < BETTER * straight * straight;
    boolean seen = Math.abs(curve.start() - curve.end()) > 10 * residual;
    if (!bent || !seen || curve.tau_s() < FASTEST_WARMING_S || curve.tau_s() > span_s) {
      return none;
    }
    return Storage.told(curve.tau_s(), curve.uTau_s(), Unit.SECOND);
  }
}
