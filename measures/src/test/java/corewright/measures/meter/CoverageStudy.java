package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Synthetic;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * How often the stated intervals hold the truth. Each record is made from a formula whose readings
 * are known in closed form (level, droop, slope, dip, band crossing), then given white or
 * correlated noise and rounded to codes; parameters are drawn anew for each.
 */
final class CoverageStudy {
  private static final double NOMINAL_V = 48;
  private static final int HOLDS = 4;

  private final Map<Quantity, List<double[]>> outcomes = new EnumMap<>(Quantity.class);

  /** Makes and reads {@code count} records. */
  static CoverageStudy of(int count, long seed) {
    CoverageStudy study = new CoverageStudy();
    for (int i = 0; i < count; i++) {
      study.record(new Random(0x9E3779B97F4A7C15L * (seed + i))); // neighbouring seeds are alike
    }
    return study;
  }

  /** What the intervals of one quantity are worth. */
  record Line(Quantity quantity, int count, double covered, double width) {
    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%-22s %7d readings, %.2f %% within U, U %.2f of the half-width",
          quantity.id(),
          count,
          100 * covered,
          width);
    }
  }

  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    outcomes.forEach(
        (quantity, all) -> {
          double[] ratios = all.stream().mapToDouble(o -> Math.abs(o[0]) / o[1]).sorted().toArray();
          double covered =
              (double) Arrays.stream(ratios).filter(ratio -> ratio <= 1).count() / all.size();
          // What all U could be multiplied by to hold exactly 95 %: the empirical half-width.
          double halfWidth = ratios[(int) (0.95 * (ratios.length - 1))];
          lines.add(new Line(quantity, all.size(), covered, 1 / halfWidth));
        });
    return lines;
  }

  private void record(Random random) {
    boolean fast = random.nextBoolean();
    double rate = fast ? 200e3 : 1e3;
    int length = 2000 + random.nextInt(3000);
    double tau = (15 + random.nextInt(25)) / rate;
    double settle_s = 20 * tau;
    double hold_s = settle_s + length / rate;
    double lsb = 0.01953125;
    double noise = lsb * (0.7 + 3 * random.nextDouble());
    double phi = new double[] {0, 0, 0.5, 0.8, 0.95}[random.nextInt(5)];
    boolean calm = random.nextBoolean(); // then extremes have a closed form too
    double ripple = calm ? 0 : noise * 2 * random.nextDouble();
    double ripple_Hz = rate * (0.02 + 0.25 * random.nextDouble());
    double resistance = 0.01 + 0.2 * random.nextDouble();
    double drift = calm ? 0 : noise * 3 * random.nextGaussian() / hold_s;
    double[] loads = {0, 0.5 + random.nextDouble(), 2 + random.nextDouble(), 1};
    double depth = 0.6 + random.nextDouble();
    double offset = random.nextDouble() * lsb;
    int n = (int) Math.round(HOLDS * hold_s * rate);
    int[] codes = new int[n];
    double state = noise * random.nextGaussian();
    for (int i = 0; i < n; i++) {
      double t = i / rate;
      int k = Math.min(HOLDS - 1, (int) (t / hold_s + 1e-12));
      double since = t - k * hold_s;
      double value = NOMINAL_V + offset - resistance * loads[k];
      value += drift * (since - settle_s - length / rate / 2);
      value -= k == 0 ? 0 : Math.signum(loads[k] - loads[k - 1]) * depth * dip(since / tau);
      value += ripple * Math.sin(2 * Math.PI * ripple_Hz * t);
      state = phi * state + Math.sqrt(1 - phi * phi) * noise * random.nextGaussian();
      codes[i] = (int) Math.round((value + state) / lsb);
    }
    double[] starts = Synthetic.every(hold_s, HOLDS);
    Capture load =
        Synthetic.capture(
            rate,
            n / rate,
            new Synthetic.Signal(Synthetic.steps(starts, loads, 1e-9), 0.003, 5.0 / 4096),
            Synthetic.exactly(48),
            new Synthetic.Signal(t -> 12.003, 0.006, 20.0 / 4096),
            random.nextLong());
    Capture capture =
        new Capture(
            rate,
            Waveform.ofCodes(codes, lsb, 0, Unit.VOLT),
            load.load(),
            load.feeds(),
            Optional.empty(),
            List.of());
    MeasuredRun run = RunMeter.read(capture, Synthetic.settings(settle_s, 0, NOMINAL_V));
    if (run.holds().size() != HOLDS) {
      throw new AssertionError("found " + run.holds().size() + " holds");
    }
    double window_s = length / rate;
    double rms =
        Math.sqrt(
            noise * noise
                + ripple * ripple / 2
                + Math.pow(drift * window_s, 2) / 12
                + lsb * lsb / 12);
    double recovery = tau * lastAt(0.01 * NOMINAL_V / depth);
    for (MeasuredHold hold : run.holds()) {
      int k = hold.index();
      add(hold, Quantity.OUTPUT, NOMINAL_V + offset - resistance * loads[k], noise);
      add(hold, Quantity.INPUT, 12.003, 0.006);
      add(hold, Quantity.LOAD, loads[k], 0.003);
      add(hold, Quantity.RIPPLE_RMS, rms, noise);
      add(hold, Quantity.DRIFT, 60 * drift, noise / window_s);
      if (k > 0) {
        add(hold, Quantity.DROOP, resistance * loads[k], noise);
      }
      if (k > 0 && calm) {
        boolean rises = loads[k] > loads[k - 1];
        add(hold, rises ? Quantity.UNDERSHOOT : Quantity.OVERSHOOT, depth, noise);
        add(hold, Quantity.RECOVERY, recovery, tau);
      }
      add(hold, Quantity.INPUT_MINIMUM, 12.003, 0.006);
    }
    Measurement slope = run.reading(Quantity.OUTPUT_RESISTANCE).measurement().orElseThrow();
    add(Quantity.OUTPUT_RESISTANCE, slope, resistance, noise);
  }

  /** Rises to 1 at 1 and falls again: x·exp(1−x). */
  private static double dip(double x) {
    return x * Math.exp(1 - x);
  }

  /** The later x at which {@link #dip} is a given height. */
  private static double lastAt(double height) {
    double low = 1;
    double high = 50;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      if (dip(middle) > height) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private void add(MeasuredHold hold, Quantity quantity, double truth, double scale) {
    hold.value(quantity).ifPresent(read -> add(quantity, read, truth, scale));
  }

  private void add(Quantity quantity, Measurement read, double truth, double scale) {
    outcomes
        .computeIfAbsent(quantity, q -> new ArrayList<>())
        .add(new double[] {(read.value() - truth) / scale, read.expanded(2) / scale});
  }
}
