package corewright.measures.meter;

import corewright.measures.Measurement;
import java.util.Arrays;

/** The lowest that an output falls to under events of its load. */
final class Dip {
  /** A dip ends where its event does, at a point: a longer mean would miss it. */
  private static final double SHARE = 0.125;

  /** Of a normal deviate, its median is at so many of its standard deviations. */
  private static final double MEDIAN_OF_NORMAL = 0.6745;

  private Dip() {}

  /**
   * The lowest mean of an eighth of an event, wherever it begins. The uncertainty holds what noise
   * and ripple lower the least of so many means by.
   */
  static Measurement lowest(Channel output, int from, double width_s) {
    int length = (int) Math.max(1, Math.round(SHARE * width_s * output.sampleRate_Hz()));
    int count = output.wave().size() - from - length + 1;
    double sum = 0;
    for (int i = 0; i < length; i++) {
      sum += output.wave().at(from + i);
    }
    double lowest = sum;
    for (int i = 1; i < count; i++) {
      sum += output.wave().at(from + i + length - 1) - output.wave().at(from + i - 1);
      lowest = Math.min(lowest, sum);
    }
    double lift = Math.sqrt(2 * Math.log(Math.max(2, count / length)));
    double u =
        Root.of(lift * scatter(output, from) / Math.sqrt(length) / 2, output.resolution().ofOne());
    return output.absolute(lowest / length, u);
  }

  /** From sample to sample, where the events are too few to be seen in a median. */
  private static double scatter(Channel output, int from) {
    double[] steps = new double[Math.min(output.wave().size() - from - 1, 100_000)];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = Math.abs(output.wave().at(from + i + 1) - output.wave().at(from + i));
    }
    Arrays.sort(steps);
    return steps.length == 0 ? 0 : steps[steps.length / 2] / MEDIAN_OF_NORMAL / Math.sqrt(2);
  }
}
