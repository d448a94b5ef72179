package corewright.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;

/** Makes captures whose truth is known, from formulas and seeded noise. */
public final class Synthetic {
  private Synthetic() {}

  /** A channel: its formula over time, its noise and what one code is worth. */
  public record Signal(DoubleUnaryOperator formula, double noise, double lsb) {

    Waveform sampled(double rate_Hz, int n, RandomGenerator random, Unit unit) {
      int[] codes = new int[n];
      for (int i = 0; i < n; i++) {
        double value = formula.applyAsDouble(i / rate_Hz) + noise * random.nextGaussian();
        codes[i] = (int) Math.round(value / lsb);
      }
      return Waveform.ofOwnCodes(codes, lsb, 0, unit);
    }
  }

  public static Capture capture(
      double rate_Hz, double length_s, Signal load, Signal output, Signal input, long seed) {
    return capture(rate_Hz, length_s, load, output, input, new Random(seed));
  }

  public static Capture capture(
      double rate_Hz,
      double length_s,
      Signal load,
      Signal output,
      Signal input,
      RandomGenerator random) {
    int n = (int) Math.round(rate_Hz * length_s);
    return new Capture(
        rate_Hz,
        output.sampled(rate_Hz, n, random, Unit.VOLT),
        Optional.of(load.sampled(rate_Hz, n, random, Unit.AMPERE)),
        List.of(new Capture.Feed("input", input.sampled(rate_Hz, n, random, Unit.VOLT))),
        Optional.empty(),
        List.of());
  }

  /**
   * Levels one after the other, with straight ramps centred on the changes.
   *
   * @param starts_s when each level begins; the first is 0
   */
  public static DoubleUnaryOperator steps(double[] starts_s, double[] levels, double ramp_s) {
    return t -> {
      int k = 0;
      while (k + 1 < starts_s.length && t >= starts_s[k + 1]) {
        k++;
      }
      double toNext = k + 1 < starts_s.length ? starts_s[k + 1] - t : Double.MAX_VALUE;
      if (toNext < ramp_s / 2) {
        return levels[k + 1] + (levels[k] - levels[k + 1]) * (0.5 + toNext / ramp_s);
      }
      double since = t - starts_s[k];
      if (k > 0 && since < ramp_s / 2) {
        return levels[k - 1] + (levels[k] - levels[k - 1]) * (0.5 + since / ramp_s);
      }
      return levels[k];
    };
  }

  /** Levels of equal length. */
  public static double[] every(double length_s, int count) {
    double[] starts = new double[count];
    for (int i = 0; i < count; i++) {
      starts[i] = i * length_s;
    }
    return starts;
  }

  public static Signal exactly(double level) {
    return new Signal(t -> level, 0, 1e-4);
  }

  public static MeterSettings settings(double settle_s, double guard_s, double nominal_V) {
    return new MeterSettings(
        Optional.of(settle_s), Optional.of(guard_s), Optional.of(nominal_V), Map.of());
  }
}
