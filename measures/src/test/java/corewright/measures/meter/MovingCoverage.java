package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Synthetic;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;

/**
 * Coverage of what moves during a hold, and of the start: sudden steps, warming up, collapse, line
 * regulation, hiccups, rise, overshoot, inrush; each a closed form, with white noise and rounding.
 */
final class MovingCoverage {
  private static final double NOMINAL_V = 48;
  private static final double RATE = 250;
  private static final double LENGTH_S = 8;

  /** A hold of less than a second has no drift and no warming to look for: quicker by far. */
  private static final double SHORT_RATE = 1250;

  private static final double SHORT_S = 0.96;

  private MovingCoverage() {}

  static void record(RandomGenerator random, Coverage into) {
    step(random, into);
    warming(random, into);
    leaving(random, into);
    line(random, into);
    hiccups(random, into);
    start(random, into);
  }

  private static double noise_V(RandomGenerator random) {
    return 0.004 + 0.02 * random.nextDouble();
  }

  private static void step(RandomGenerator random, Coverage into) {
    double at_s = 2 + 4 * random.nextDouble();
    double size_V = (random.nextBoolean() ? 1 : -1) * (0.1 + 0.3 * random.nextDouble());
    MeasuredHold hold = hold(t -> 48 + (t > at_s ? size_V : 0), t -> 12, random);
    into.add(hold, Quantity.LARGEST_STEP, size_V);
  }

  private static void warming(RandomGenerator random, Coverage into) {
    double tau_s = 1.5 + 2 * random.nextDouble();
    double fall_V = 0.3 + 0.7 * random.nextDouble();
    MeasuredHold hold = hold(t -> 48 - fall_V * -Math.expm1(-t / tau_s), t -> 12, random);
    into.add(hold, Quantity.THERMAL_TIME_CONSTANT, tau_s);
  }

  /** The output falls in a straight line from a moment on, while the input falls as well. */
  private static void leaving(RandomGenerator random, Coverage into) {
    double from_s = 0.4 + 0.35 * random.nextDouble();
    double fall = 30 + 120 * random.nextDouble();
    double after_s = from_s + Regulation.LOST_PART * NOMINAL_V / fall;
    DoubleUnaryOperator input = t -> 12 - 3 * t;
    MeasuredHold hold = brief(t -> 48 - fall * Math.max(0, t - from_s), input, random);
    into.add(hold, Quantity.COLLAPSE, after_s);
    into.add(hold, Quantity.INPUT_AT_COLLAPSE, input.applyAsDouble(after_s));
  }

  private static void line(RandomGenerator random, Coverage into) {
    double part = 0.002 + 0.02 * random.nextDouble();
    double fall = 1.6 + 2.4 * random.nextDouble();
    MeasuredHold hold = brief(t -> 48 - part * fall * t, t -> 16 - fall * t, random);
    double range = fall * (hold.windowEnd_s() - hold.windowStart_s());
    into.add(hold, Quantity.LINE_REGULATION, 100 * part * range / NOMINAL_V);
  }

  private static void hiccups(RandomGenerator random, Coverage into) {
    double period_s = 0.024 + 0.12 * random.nextDouble();
    MeasuredHold hold = brief(t -> t / period_s % 1 < 0.4 ? 48 : 0, t -> 12, random);
    into.add(hold, Quantity.HICCUP_PERIOD, period_s);
  }

  /** First order: 10 to 90 % take ln 9 time constants, and nothing goes beyond the end. */
  private static void start(RandomGenerator random, Coverage into) {
    double rate = 10e3;
    double on_s = 0.02 + 0.01 * random.nextDouble();
    double tau_s = 0.005 + 0.01 * random.nextDouble();
    double beyond_V = 3 * random.nextDouble();
    double peak_A = 10 + 30 * random.nextDouble();
    double fade_s = 0.003;
    Capture current =
        Synthetic.capture(
            rate,
            0.3,
            Synthetic.exactly(1),
            new Synthetic.Signal(
                t -> 2 + (t < on_s ? -2 : peak_A * hump((t - on_s) / fade_s)), 0.05, 0.02),
            Synthetic.exactly(12),
            random);
    Capture output =
        Synthetic.capture(
            rate,
            0.3,
            Synthetic.exactly(1),
            new Synthetic.Signal(
                t -> t < on_s ? 0 : rise(t - on_s, tau_s, beyond_V), noise_V(random), 0.0195),
            Synthetic.exactly(12),
            random);
    MeasuredRun run =
        RunMeter.read(
            new Capture(
                rate,
                output.output(),
                output.load(),
                output.feeds(),
                Optional.of(current.output()),
                List.of()),
            Synthetic.settings(0.1, 0, NOMINAL_V));
    into.add(run, Quantity.START_RISE, rise_s(tau_s, beyond_V));
    into.add(run, Quantity.START_OVERSHOOT, beyond_V);
    into.add(run, Quantity.INRUSH, 2 + peak_A);
    double up_s = at_s(Start.UP_PART, tau_s, beyond_V);
    double on = up_s + Start.AFTERWARDS * rise_s(tau_s, beyond_V);
    into.add(run, Quantity.INRUSH_I2T, i2t(peak_A, fade_s, on));
  }

  /** Up in a first order way, then beyond by a hump that is highest six time constants later. */
  private static double rise(double t, double tau_s, double beyond_V) {
    return 48 * -Math.expm1(-t / tau_s) + beyond_V * hump(t / (10 * tau_s));
  }

  /** ∫(2 + p·x·exp(1−x))² dt over a time, x = t/f: each product has its own closed form. */
  private static double i2t(double peak_A, double fade_s, double time_s) {
    double x = time_s / fade_s;
    double once = Math.E * (1 - Math.exp(-x) * (1 + x));
    double twice = Math.E * Math.E * (1 - Math.exp(-2 * x) * (1 + 2 * x + 2 * x * x)) / 4;
    return 4 * time_s + fade_s * (4 * peak_A * once + peak_A * peak_A * twice);
  }

  private static double hump(double x) {
    return x * Math.exp(1 - x);
  }

  private static double rise_s(double tau_s, double beyond_V) {
    return at_s(0.9, tau_s, beyond_V) - at_s(0.1, tau_s, beyond_V);
  }

  private static double at_s(double part, double tau_s, double beyond_V) {
    double low = 0;
    double high = 10 * tau_s;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (rise(middle, tau_s, beyond_V) < part * NOMINAL_V) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static MeasuredHold hold(
      DoubleUnaryOperator output, DoubleUnaryOperator input, RandomGenerator random) {
    return hold(RATE, LENGTH_S, output, input, random);
  }

  private static MeasuredHold brief(
      DoubleUnaryOperator output, DoubleUnaryOperator input, RandomGenerator random) {
    return hold(SHORT_RATE, SHORT_S, output, input, random);
  }

  private static MeasuredHold hold(
      double rate,
      double length_s,
      DoubleUnaryOperator output,
      DoubleUnaryOperator input,
      RandomGenerator random) {
    Capture capture =
        Synthetic.capture(
            rate,
            length_s,
            Synthetic.exactly(1),
            new Synthetic.Signal(output, noise_V(random), 0.0195),
            new Synthetic.Signal(input, 0.006, 0.005),
            random);
    return RunMeter.read(capture, Synthetic.settings(length_s / 16, 0, NOMINAL_V)).holds().get(0);
  }
}
