package corewright.measures.wave;

import corewright.measures.Waveform;
import corewright.measures.statistics.LinearFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Capacitance and series resistance of what feeds a load, from how the output answers when the load
 * changes, by least squares on the measured waveforms:
 *
 * <pre>  v(t) = v₀ + a·t − R·i(t) − q(t)/C + b·∫q + c·∬q,   q(t) = ∫ i dt</pre>
 *
 * with i counted from its level before. R is the step that comes with the current, at once; C is
 * what the charge takes; the last two terms are the converter, which begins to answer in proportion
 * to what is missing. Both waveforms go through the same moving average, one ripple period wide:
 * the model is linear, so the average changes neither R nor C.
 *
 * <p>Where the current moves fast the inductance of the leads adds its own voltage: samples within
 * 5 µs of such places are left out, and the lines through the others are carried on past them.
 *
 * @param capacitance F
 * @param uCapacitance standard uncertainty, from the scatter about the fit
 * @param resistance Ω, leads between capacitor and measuring point included
 * @param uResistance standard uncertainty, from the scatter about the fit
 */
public record StorageFit(
    double capacitance, double uCapacitance, double resistance, double uResistance) {
  private static final double RINGING_S = 5e-6;

  /** A change from one sample to the next by this part of all the current's range is fast. */
  private static final double FAST = 0.1;

  private static final int COLUMNS = 6;
  private static final int FEWEST_ROWS = 16;
  private static final double MICRO = 1e-6; // seconds: the columns' own scale

  /**
   * @param from first sample of the stretch; the load is steady at its begin
   * @param change first sample at which the load moves
   * @param to after the last sample of the stretch
   * @param period samples in a period of the ripple, with its fraction; 0 where there is none
   * @return empty where too few samples are left, or the load does not change enough to tell
   */
  public static Optional<StorageFit> of(
      Waveform output,
      Waveform load,
      double sampleRate_Hz,
      int from,
      int change,
      int to,
      double period) {
    double[] v = Smoothing.over(output, from, to, period);
    double[] i = Smoothing.over(load, from, to, period);
    boolean[] left = leftOut(load, from, to, sampleRate_Hz, period);
    double step = 1 / sampleRate_Hz / MICRO;
    double before = mean(i, Math.max(1, change - from - (int) Math.ceil(period / 2)));
    List<double[]> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    double charge = 0;
    double answer = 0;
    double late = 0;
    for (int k = 0; k < v.length; k++) {
      double now = i[k] - before;
      if (k > 0) {
        double was = charge;
        charge += (now + i[k - 1] - before) / 2 * step;
        double had = answer;
        answer += (charge + was) / 2 * step;
        late += (answer + had) / 2 * step;
      }
      if (!left[k]) {
        rows.add(new double[] {1, k * step, -now, -charge, answer, late});
        values.add(v[k] - v[0]);
      }
    }
    return rows.size() < Math.max(FEWEST_ROWS, 2 * COLUMNS)
        ? Optional.empty()
        : fitted(rows, values, Math.max(1, period));
  }

  private static Optional<StorageFit> fitted(
      List<double[]> rows, List<Double> values, double correlated) {
    double[][] model = scaled(rows);
    double[] scales = scales(rows);
    double[] y = values.stream().mapToDouble(Double::doubleValue).toArray();
    LinearFit fit;
    try {
      fit = LinearFit.of(model, y);
    } catch (IllegalArgumentException notTold) {
      return Optional.empty(); // the load does not move in what is left
    }
    double wider = Math.sqrt(correlated);
    double resistance = fit.coefficient(2) / scales[2];
    double perCharge = fit.coefficient(3) / scales[3] / MICRO;
    double uPerCharge = wider * fit.u(3) / scales[3] / MICRO;
    if (!(perCharge > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new StorageFit(
            1 / perCharge,
            uPerCharge / (perCharge * perCharge),
            resistance,
            wider * fit.u(2) / scales[2]));
  }

  private static double[] scales(List<double[]> rows) {
    double[] scales = new double[COLUMNS];
    for (double[] row : rows) {
      for (int c = 0; c < COLUMNS; c++) {
        scales[c] = Math.max(scales[c], Math.abs(row[c]));
      }
    }
    for (int c = 0; c < COLUMNS; c++) {
      scales[c] = scales[c] == 0 ? 1 : scales[c];
    }
    return scales;
  }

  private static double[][] scaled(List<double[]> rows) {
    double[] scales = scales(rows);
    return rows.stream()
        .map(
            row -> {
              double[] out = new double[COLUMNS];
              for (int c = 0; c < COLUMNS; c++) {
                out[c] = row[c] / scales[c];
              }
              return out;
            })
        .toArray(double[][]::new);
  }

  /** Samples that a fast change of the current reaches, through the average or by ringing. */
  private static boolean[] leftOut(
      Waveform load, int from, int to, double sampleRate_Hz, double period) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      low = Math.min(low, load.at(i));
      high = Math.max(high, load.at(i));
    }
    int reach = (int) Math.ceil(period / 2 + RINGING_S * sampleRate_Hz);
    boolean[] left = new boolean[to - from];
    for (int i = from + 1; i < to; i++) {
      if (Math.abs(load.at(i) - load.at(i - 1)) > FAST * (high - low)) {
        for (int k = Math.max(from, i - 1 - reach); k < Math.min(to, i + 1 + reach); k++) {
          left[k - from] = true;
        }
      }
    }
    return left;
  }

  private static double mean(double[] x, int count) {
    double sum = 0;
    int n = Math.max(1, Math.min(count, x.length));
    for (int i = 0; i < n; i++) {
      sum += x[i] / n;
    }
    return sum;
  }
}
