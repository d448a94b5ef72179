package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.EnumMap;
import java.util.Map;

/**
 * An input that fell far below what a unit must work from, and came back, without load: what the
 * output did meanwhile and how long it needed afterwards. Told, and never judged. Means of 1 ms.
 *
 * @param output in volt
 * @param feed in volt
 */
record Survival(Channel output, Channel feed) {
  static final Quantity[] ALL = {
    Quantity.SURVIVAL_LOWEST, Quantity.SURVIVAL_OUT, Quantity.SURVIVAL_BACK
  };

  private static final double MEAN_S = 1e-3;

  /** An input that is lower than this part of where it began has fallen. */
  private static final double FALLEN = 0.9;

  /** As recovery is told: within 1 % of where it was. */
  private static final double BACK = 0.99;

  private static final int FEWEST_BEFORE = 10;

  /** The ends of a time, each known to a mean: u of their difference, s. */
  private static final double U_S = MEAN_S / Math.sqrt(6);

  Map<Quantity, Reading> read() {
    double[] input = Overshoot.means(feed, 0);
    double[] out = Overshoot.means(output, 0);
    int down = first(input, FALLEN * input[0]);
    if (down < FEWEST_BEFORE) {
      return StepMeter.none(Reading.none("the input did not fall"), ALL);
    }
    double before_V = 0;
    for (int i = 0; i < down; i++) {
      before_V += out[i] / down;
    }
    int up = last(input, FALLEN * input[0]) + 1;
    double lowest = Double.POSITIVE_INFINITY;
    int outside = 0;
    for (int i = down; i < out.length; i++) {
      lowest = Math.min(lowest, out[i]);
      outside += out[i] < BACK * before_V ? 1 : 0;
    }
    int back = Math.max(up, last(out, BACK * before_V) + 1);
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    readings.put(
        Quantity.SURVIVAL_LOWEST, Reading.of(lowest, output.absolute(lowest, 0).u(), Unit.VOLT));
    readings.put(Quantity.SURVIVAL_OUT, Reading.of(outside * MEAN_S, U_S, Unit.SECOND));
    readings.put(
        Quantity.SURVIVAL_BACK,
        back < out.length
            ? Reading.of((back - up) * MEAN_S, U_S, Unit.SECOND)
            : Reading.none(
                "the output had not come back "
                    + Figures.number((out.length - up) * MEAN_S, 1)
                    + " s after the input: it latches off, or starts late"));
    return readings;
  }

  private static int first(double[] of, double below) {
    int i = 0;
    while (i < of.length && of[i] >= below) {
      i++;
    }
    return i == of.length ? -1 : i;
  }

  private static int last(double[] of, double below) {
    int i = of.length - 1;
    while (i >= 0 && of[i] >= below) {
      i--;
    }
    return i;
  }
}
