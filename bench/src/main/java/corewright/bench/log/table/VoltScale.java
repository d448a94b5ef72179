package corewright.bench.log.table;

import java.util.Arrays;
import java.util.Optional;

/**
 * The factor from printed numbers to volts, and how it was told.
 *
 * @param scale printed value times this is in volts
 * @param typical value of the channel, V: its middle
 * @param rest where it stays when nothing pulls: the value that a tenth lies above, V
 * @param words for the report
 * @param guessed whether the range told, and not the file
 */
record VoltScale(double scale, double typical, double rest, String words, boolean guessed) {
  private static final double[] FACTORS = {1, 1e-3, 0.1, 0.01};

  /** Share of values ten times the others from which on a decimal mark was lost in part. */
  private static final double MIXED = 0.02;

  /** Whether the number is in volts as it stands, or in the unit that the file states. */
  boolean natural() {
    return !guessed || scale == 1;
  }

  /** Outcome of looking for the factor. */
  sealed interface Found {
    record Scale(VoltScale scale) implements Found {}

    /** Some values are ten times the others. */
    record Mixed() implements Found {}

    record None() implements Found {}
  }

  /**
   * The factor that brings the channel into a range of volts.
   *
   * @param stated the unit of the file, if it is one of volts
   */
  static Found into(double[] printed, Optional<LogUnit> stated, double low_V, double high_V) {
    double[] numbers = measured(printed);
    if (numbers.length == 0) {
      return new Found.None();
    }
    for (double factor : FACTORS) {
      for (double base : bases(stated)) {
        double scale = base * factor;
        VoltScale found = at(numbers, scale, stated, factor == 1 && base == bases(stated)[0]);
        if (found.rest >= low_V && found.rest <= high_V) {
          boolean thousandth = stated.isPresent() && factor == 1e-3;
          return thousandth || !mixed(numbers, scale, low_V, high_V)
              ? new Found.Scale(found)
              : new Found.Mixed();
        }
      }
    }
    return new Found.None();
  }

  /** A stated factor is tried as written, and the other way round where tools differ. */
  private static double[] bases(Optional<LogUnit> stated) {
    double scale = stated.map(LogUnit::scale).orElse(1.0);
    boolean either = stated.filter(LogUnit::ambiguous).isPresent();
    return either ? new double[] {scale, 1 / scale} : new double[] {scale};
  }

  private static VoltScale at(
      double[] numbers, double scale, Optional<LogUnit> stated, boolean asWritten) {
    double typical = numbers[numbers.length / 2] * scale;
    double rest = numbers[(int) Math.min(numbers.length - 1, 0.9 * numbers.length)] * scale;
    String words =
        stated.isPresent() && asWritten
            ? "unit as the file states it"
            : scale == 1
                ? "V by its range"
                : "printed value × " + number(scale) + " V by its range";
    return new VoltScale(scale, typical, rest, words, !(stated.isPresent() && asWritten));
  }

  private static boolean mixed(double[] numbers, double scale, double low_V, double high_V) {
    double bottom = 0.4 * low_V / scale;
    double top = high_V / scale;
    long in = Arrays.stream(numbers).filter(v -> v >= bottom && v <= top).count();
    long above =
        Arrays.stream(numbers).filter(v -> v > 10 * bottom && v > top && v <= 10 * top).count();
    long below = Arrays.stream(numbers).filter(v -> v < bottom && v >= bottom / 10).count();
    double least = Math.max(1.5, MIXED * numbers.length);
    // Under a factor of a tenth one value that kept its mark is enough: 47 among 476.
    return in > 0 && (above >= least || (scale < 1 && below > 0));
  }

  /** The numbers that are measured values, ascending. */
  private static double[] measured(double[] sorted) {
    double[] positive = Arrays.stream(sorted).filter(v -> v > 0).toArray();
    double typical = positive.length == 0 ? 0 : positive[positive.length / 2];
    return Arrays.stream(positive).filter(v -> !NoData.is(v, typical)).toArray();
  }

  private static String number(double scale) {
    return java.math.BigDecimal.valueOf(scale).stripTrailingZeros().toPlainString();
  }
}
