package corewright.measures.control;

/** A crossed study: values by appraiser, trial and part, none missing. */
final class Layout {
  private final double[][][] values;

  private Layout(double[][][] values) {
    this.values = values;
  }

  /**
   * @throws IllegalArgumentException if there are fewer than two of anything, or a value is missing
   */
  static Layout of(double[][][] values) {
    Layout layout = new Layout(values);
    if (values.length < 2 || values[0].length < 2 || values[0][0].length < 2) {
      throw new IllegalArgumentException(
          "a gauge study needs at least two appraisers, two trials and two parts");
    }
    for (double[][] appraiser : values) {
      for (double[] trial : appraiser) {
        if (appraiser.length != layout.trials() || trial.length != layout.parts()) {
          throw new IllegalArgumentException(
              "a value is missing: every appraiser measures every part equally often");
        }
      }
    }
    return layout;
  }

  int appraisers() {
    return values.length;
  }

  int trials() {
    return values[0].length;
  }

  int parts() {
    return values[0][0].length;
  }

  double[] appraiserMeans() {
    double[] means = new double[appraisers()];
    for (int a = 0; a < means.length; a++) {
      for (double[] trial : values[a]) {
        for (double value : trial) {
          means[a] += value / (trials() * parts());
        }
      }
    }
    return means;
  }

  double[] partMeans() {
    double[] means = new double[parts()];
    for (double[][] appraiser : values) {
      for (double[] trial : appraiser) {
        for (int p = 0; p < means.length; p++) {
          means[p] += trial[p] / (appraisers() * trials());
        }
      }
    }
    return means;
  }

  /** Sum of squares of all values about their mean. */
  double squares() {
    double[] all = new double[appraisers() * trials() * parts()];
    int i = 0;
    for (double[][] appraiser : values) {
      for (double[] trial : appraiser) {
        for (double value : trial) {
          all[i++] = value;
        }
      }
    }
    return GaugeStudy.squares(all);
  }
}
