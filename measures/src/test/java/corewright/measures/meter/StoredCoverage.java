package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Synthetic;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * Coverage of what the capacitors hold: a load step into a capacitor that a converter fills again,
 * a train of pulses, a decay through a known resistance; each a closed form, with white noise and
 * rounding.
 */
final class StoredCoverage {
  private static final double NOMINAL_V = 48;

  private StoredCoverage() {}

  static void record(RandomGenerator random, Coverage into) {
    step(random, into);
    pulses(random, into);
    decay(random, into);
  }

  /**
   * The converter makes up for the missing voltage with a time constant of its own: with u the
   * voltage that is missing, C·du/dt = i − u·C/τ.
   */
  private static void step(RandomGenerator random, Coverage into) {
    double rate = 500e3;
    double c_F = 200e-6 * Math.pow(5, random.nextDouble());
    double r_ohm = 0.02 * Math.pow(5, random.nextDouble());
    double step_A = 1 + 2 * random.nextDouble();
    double edge_s = (6 + 20 * random.nextDouble()) * 1e-6;
    double tau_s = (1.5 + 3 * random.nextDouble()) * 1e-3;
    double noise_V = (0.5 + 2 * random.nextDouble()) * 1e-3;
    double at_s = 2e-3 + random.nextDouble() / rate;
    Synthetic.Signal output =
        new Synthetic.Signal(
            t -> {
              double since = t - at_s + edge_s / 2;
              double ramp = Math.max(0, Math.min(edge_s, since));
              // Of a ramp: slope·(τt − τ²(1 − e^(−t/τ))), its end as a second ramp the other way.
              double missing =
                  step_A / edge_s / c_F * (filled(since, tau_s) - filled(since - edge_s, tau_s));
              return NOMINAL_V - r_ohm * step_A * ramp / edge_s - missing;
            },
            noise_V,
            1.5e-3);
    double[] starts = {0, at_s};
    MeasuredRun run =
        RunMeter.read(
            Synthetic.capture(
                rate,
                8e-3,
                new Synthetic.Signal(
                    Synthetic.steps(starts, new double[] {0, step_A}, edge_s), 1e-3, 1e-3),
                output,
                Synthetic.exactly(12),
                random),
            Synthetic.settings(1e-3, 0, NOMINAL_V));
    into.add(run.holds().get(1), Quantity.CAPACITANCE_FROM_CHARGE, c_F);
    into.add(run.holds().get(1), Quantity.ESR, r_ohm);
  }

  private static double filled(double since_s, double tau_s) {
    double t = Math.max(0, since_s);
    return tau_s * t + tau_s * tau_s * Math.expm1(-t / tau_s);
  }

  private static void pulses(RandomGenerator random, Coverage into) {
    double ramp_s = (0.3 + 0.3 * random.nextDouble()) * 1e-3;
    PulseSeries series =
        new PulseSeries(
            200e-6 * Math.pow(10, random.nextDouble()),
            0.015 * Math.pow(5, random.nextDouble()),
            8 + 12 * random.nextDouble(),
            ramp_s,
            (0.05 + 0.15 * random.nextDouble()) / ramp_s);
    Capture capture =
        series.capture(100e3, 0.1, (1 + 3 * random.nextDouble()) * 1e-3, 1.5e-3, random);
    MeasuredHold hold =
        RunMeter.read(capture, Synthetic.settings(0.005, 0, NOMINAL_V)).holds().get(0);
    into.add(hold, Quantity.PULSE_RATE, series.rate_Hz());
    into.add(hold, Quantity.DIP, series.dip_V());
    into.add(hold, Quantity.DIP_ALTERNATION, 0);
  }

  /** The resistance is known as well as its tolerance says, and is drawn from it. */
  private static void decay(RandomGenerator random, Coverage into) {
    double rate = 10e3;
    double c_F = 200e-6 * Math.pow(10, random.nextDouble());
    double known_ohm = 500 + 1500 * random.nextDouble();
    double r_ohm = known_ohm * (1 + 0.01 * random.nextGaussian());
    double noise_V = 0.02 * random.nextDouble();
    double off_s = 0.1;
    Capture capture =
        Synthetic.capture(
            rate,
            0.5,
            new Synthetic.Signal(
                Synthetic.steps(new double[] {0, off_s}, new double[] {2, 0}, 1e-9), 0, 1e-3),
            new Synthetic.Signal(
                t -> 52 * Math.exp(-Math.max(0, t - off_s) / r_ohm / c_F), noise_V, 0.01),
            new Synthetic.Signal(t -> t < off_s ? 12 : 0.1, 0, 0.01),
            random);
    MeasuredRun run =
        RunMeter.read(
            capture,
            Synthetic.settings(0.01, 0, NOMINAL_V)
                .withCircuit(Optional.empty(), Optional.of(known_ohm)));
    into.add(run.holds().get(1), Quantity.CAPACITANCE_FROM_DECAY, c_F);
  }
}
