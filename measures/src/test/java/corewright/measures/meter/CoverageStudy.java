package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Synthetic;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * How often the stated intervals hold the truth, in records of four holds. Each is made from a
 * formula whose readings are known in closed form (level, droop, slope, dip, band crossing), then
 * given white or correlated noise and rounded to codes; parameters are drawn anew for each.
 */
final class CoverageStudy {
  private static final double NOMINAL_V = 48;
  private static final int HOLDS = 4;
  private static final double BAND_V = 0.3;

  private CoverageStudy() {}

  static void record(RandomGenerator random, Coverage into) {
    boolean fast = random.nextBoolean();
    double rate = fast ? 200e3 : 1e3;
    int length = 1200 + random.nextInt(1800);
    double tau = (15 + random.nextInt(25)) / rate;
    double settle_s = 20 * tau;
    double hold_s = settle_s + length / rate;
    double lsb = 0.01953125;
    double noise = lsb * (0.7 + 3 * random.nextDouble());
    double phi = new double[] {0, 0, 0.5, 0.8, 0.95}[random.nextInt(5)];
    boolean calm = random.nextBoolean(); // then extremes have a closed form too
    double ripple = calm ? 0 : 0.2 * noise * Math.pow(50, random.nextDouble());
    double ripple_Hz = rate * (0.02 + 0.15 * random.nextDouble());
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
    double input_V = 12 + random.nextDouble() * 20 / 4096;
    double[] starts = Synthetic.every(hold_s, HOLDS);
    Capture load =
        Synthetic.capture(
            rate,
            n / rate,
            new Synthetic.Signal(Synthetic.steps(starts, loads, 1e-9), 0.003, 5.0 / 4096),
            new Synthetic.Signal(Synthetic.steps(starts, inputs(loads), 1e-9), 0.02, 40.0 / 4096),
            new Synthetic.Signal(t -> input_V, 0.004 + 0.02 * random.nextDouble(), 20.0 / 4096),
            random);
    Capture capture =
        new Capture(
            rate,
            Waveform.ofOwnCodes(codes, lsb, 0, Unit.VOLT),
            load.load(),
            load.feeds(),
            Optional.of(load.output()),
            List.of());
    MeasuredRun run =
        RunMeter.read(
            capture, Synthetic.settings(settle_s, 0, NOMINAL_V).withBand(Optional.of(BAND_V)));
    if (run.holds().size() != HOLDS) {
      throw new AssertionError("found " + run.holds().size() + " holds");
    }
    double window_s = length / rate;
    double still = noise * noise + ripple * ripple / 2 + lsb * lsb / 12;
    double rms = Math.sqrt(still + Math.pow(drift * window_s, 2) / 12);
    for (MeasuredHold hold : run.holds()) {
      int k = hold.index();
      double level = NOMINAL_V + offset - resistance * loads[k];
      into.add(hold, Quantity.OUTPUT, level);
      into.add(hold, Quantity.INPUT, input_V);
      into.add(hold, Quantity.LOAD, loads[k]);
      into.add(hold, Quantity.INPUT_CURRENT, inputs(loads)[k]);
      into.add(hold, Quantity.EFFICIENCY, 100 * level * loads[k] / (input_V * inputs(loads)[k]));
      into.add(hold, Quantity.RIPPLE_RMS, rms);
      into.add(hold, Quantity.RIPPLE_RMS_DETRENDED, Math.sqrt(still));
      if (ripple > 0) {
        into.add(hold, Quantity.RIPPLE_FUNDAMENTAL, ripple_Hz);
        into.add(hold, Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE, ripple);
      }
      into.add(hold, Quantity.DRIFT, 60 * drift);
      into.add(hold, Quantity.DRIFT_ROBUST, 60 * drift);
      if (k > 0) {
        into.add(hold, Quantity.DROOP, resistance * loads[k]);
        into.add(hold, Quantity.LOAD_REGULATION, 100 * resistance * loads[k] / level);
      }
      if (k > 0 && calm) {
        boolean rises = loads[k] > loads[k - 1];
        into.add(hold, rises ? Quantity.UNDERSHOOT : Quantity.OVERSHOOT, depth);
        into.add(hold, Quantity.RECOVERY, tau * lastAt(0.01 * NOMINAL_V / depth));
        into.add(hold, Quantity.RECOVERY_QUARTER, tau * lastAt(0.0025 * NOMINAL_V / depth));
        into.add(hold, Quantity.RECOVERY_BAND, tau * lastAt(BAND_V / depth));
        if (rises) {
          into.add(hold, Quantity.TIME_OF_MINIMUM, tau);
          into.add(hold, Quantity.OUTPUT_MINIMUM, level - depth);
        }
      }
      into.add(hold, Quantity.INPUT_MINIMUM, input_V);
    }
    into.add(run, Quantity.OUTPUT_RESISTANCE, resistance);
  }

  /** What the input draws at each load, A: some of its own, and more than in proportion. */
  private static double[] inputs(double[] loads) {
    double[] inputs = new double[loads.length];
    for (int k = 0; k < inputs.length; k++) {
      inputs[k] = 0.3 + 4.4 * loads[k];
    }
    return inputs;
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
}
