package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;

/**
 * A capacitor with series resistance that a train of current triangles empties and a constant
 * current fills again, so that the mean stays where it is. Everything about it is a closed form.
 *
 * @param peak_A top of the triangle, reached in a straight line, then cut off
 * @param ramp_s how long that takes
 */
record PulseSeries(
    double capacitance_F, double esr_ohm, double peak_A, double ramp_s, double rate_Hz) {
  static final double LEVEL_V = 48;

  double charge() {
    return peak_A * ramp_s / 2;
  }

  /**
   * Time in the pulse at which the output is lowest: its very end, where the current is largest.
   */
  double dip_V() {
    double refill_A = charge() * rate_Hz;
    return charge() / capacitance_F + esr_ohm * peak_A - refill_A * ramp_s / capacitance_F;
  }

  /** Charge drawn in the current period at a time in it. */
  private double drawn(double since_s) {
    return since_s >= ramp_s ? charge() : peak_A * since_s * since_s / ramp_s / 2;
  }

  private double current_A(double since_s) {
    return since_s < ramp_s ? peak_A * since_s / ramp_s : 0;
  }

  /** Voltage without the resistance: what is filled in less what is drawn, in this period. */
  private double stored_V(double since_s) {
    return LEVEL_V + (charge() * rate_Hz * since_s - drawn(since_s)) / capacitance_F;
  }

  Capture capture(double sampleRate_Hz, double length_s, double noise_V, double lsb_V, long seed) {
    return capture(sampleRate_Hz, length_s, noise_V, lsb_V, new Random(seed));
  }

  Capture capture(
      double sampleRate_Hz, double length_s, double noise_V, double lsb_V, RandomGenerator random) {
    int n = (int) Math.round(sampleRate_Hz * length_s);
    int[] volts = new int[n];
    int[] amperes = new int[n];
    for (int k = 0; k < n; k++) {
      double since = k / sampleRate_Hz % (1 / rate_Hz);
      double i = current_A(since);
      double v = stored_V(since) - esr_ohm * i + noise_V * random.nextGaussian();
      volts[k] = (int) Math.round(v / lsb_V);
      amperes[k] = (int) Math.round(i / 0.001);
    }
    return new Capture(
        sampleRate_Hz,
        Waveform.ofCodes(volts, lsb_V, 0, Unit.VOLT),
        Optional.of(Waveform.ofCodes(amperes, 0.001, 0, Unit.AMPERE)),
        List.of(new Capture.Feed("input", Waveform.ofCodes(new int[n], 1e-3, 12.5, Unit.VOLT))),
        Optional.empty(),
        List.of());
  }
}
