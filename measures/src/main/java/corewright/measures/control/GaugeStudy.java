package corewright.measures.control;

/**
 * How much of what is seen is the measuring and how much the parts: benches and operators measure
 * the same units several times.
 *
 * @param equipment standard deviation of one operator repeating (repeatability)
 * @param appraisers standard deviation between operators or benches (reproducibility)
 * @param parts standard deviation between the units
 * @see "AIAG, Measurement Systems Analysis, 4th edition, chapter III (from memory)"
 */
public record GaugeStudy(double equipment, double appraisers, double parts) {

  /**
   * By averages and ranges, as on the paper form.
   *
   * @param values by appraiser, trial, part; every appraiser measures every part as often
   */
  public static GaugeStudy byRanges(double[][][] values) {
    Layout layout = Layout.of(values);
    double meanRange = 0;
    for (double[][] appraiser : values) {
      for (int part = 0; part < layout.parts(); part++) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (double[] trial : appraiser) {
          lowest = Math.min(lowest, trial[part]);
          highest = Math.max(highest, trial[part]);
        }
        meanRange += (highest - lowest) / (layout.appraisers() * layout.parts());
      }
    }
    double equipment = meanRange / ChartConstants.of(layout.trials()).d2();
    double between =
        range(layout.appraiserMeans())
            / ChartConstants.of(layout.appraisers()).rootMeanSquareRange();
    double repeats = layout.parts() * layout.trials();
    double appraisers = Math.sqrt(Math.max(0, between * between - equipment * equipment / repeats));
    double parts =
        range(layout.partMeans()) / ChartConstants.of(layout.parts()).rootMeanSquareRange();
    return new GaugeStudy(equipment, appraisers, parts);
  }

  /** By analysis of variance, the interaction pooled with the repetitions. */
  public static GaugeStudy byVariance(double[][][] values) {
    Layout layout = Layout.of(values);
    double a = layout.appraisers();
    double p = layout.parts();
    double t = layout.trials();
    double ofAppraisers = p * t * squares(layout.appraiserMeans());
    double ofParts = a * t * squares(layout.partMeans());
    double rest = layout.squares() - ofAppraisers - ofParts;
    double meanRest = rest / (a * p * t - a - p + 1);
    double meanAppraisers = ofAppraisers / (a - 1);
    double meanParts = ofParts / (p - 1);
    return new GaugeStudy(
        Math.sqrt(meanRest),
        Math.sqrt(Math.max(0, (meanAppraisers - meanRest) / (p * t))),
        Math.sqrt(Math.max(0, (meanParts - meanRest) / (a * t))));
  }

  private static double range(double[] x) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (double value : x) {
      lowest = Math.min(lowest, value);
      highest = Math.max(highest, value);
    }
    return highest - lowest;
  }

  static double squares(double[] x) {
    double mean = 0;
    for (double value : x) {
      mean += value / x.length;
    }
    double sum = 0;
    for (double value : x) {
      sum += (value - mean) * (value - mean);
    }
    return sum;
  }

  /** Equipment and appraisers together (GRR). */
  public double measuring() {
    return Math.hypot(equipment, appraisers);
  }

  public double total() {
    return Math.hypot(measuring(), parts);
  }

  /** {@link #measuring} as a share of {@link #total}, %. Below 10 good, above 30 not acceptable. */
  public double measuringPercent() {
    return 100 * measuring() / total();
  }

  /** How many kinds of parts the measuring can tell apart (ndc), at least 5 wanted. */
  public int distinctCategories() {
    return (int) Math.floor(1.41 * parts / measuring());
  }
}
