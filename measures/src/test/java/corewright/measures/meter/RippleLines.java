package corewright.measures.meter;

import java.util.Arrays;
import java.util.random.RandomGenerator;

/**
 * Ripple as a sum of sines.
 *
 * @param orders multiples of the fundamental, which comes first
 * @param frequency of the fundamental, over the sample rate
 * @param amplitudes of each, peak
 * @param phases of each
 */
record RippleLines(double[] orders, double frequency, double[] amplitudes, double[] phases) {
  private static final double[] ORDERS = {1, 0.5, 2, 3};

  /** A fundamental of 1 to 10 times the noise; of the others a third are not there at all. */
  static RippleLines drawn(RandomGenerator random, double noise) {
    double[] amplitudes = new double[ORDERS.length];
    double[] phases = new double[ORDERS.length];
    for (int k = 0; k < ORDERS.length; k++) {
      double part = Math.max(0, 0.45 * random.nextDouble() - 0.15);
      amplitudes[k] = k == 0 ? noise * Math.pow(10, random.nextDouble()) : amplitudes[0] * part;
      phases[k] = 2 * Math.PI * random.nextDouble();
    }
    return new RippleLines(ORDERS, 0.03 + 0.06 * random.nextDouble(), amplitudes, phases);
  }

  /** Of the fundamental. */
  double amplitude() {
    return amplitudes[0];
  }

  /** Amplitude of a line over that of the fundamental. */
  double part(double order) {
    for (int k = 0; k < orders.length; k++) {
      if (orders[k] == order) {
        return amplitudes[k] / amplitudes[0];
      }
    }
    return 0;
  }

  double at(int sample) {
    double sum = 0;
    for (int k = 0; k < orders.length; k++) {
      double turn = 2 * Math.PI * orders[k] * frequency;
      sum += amplitudes[k] * Math.sin(turn * sample + phases[k]);
    }
    return sum;
  }

  double meanSquare() {
    return Arrays.stream(amplitudes).map(a -> a * a / 2).sum();
  }

  RippleLines through(OnePole filter) {
    double[] less = amplitudes.clone();
    double[] later = phases.clone();
    for (int k = 0; k < orders.length; k++) {
      less[k] *= filter.gain(orders[k] * frequency);
      later[k] += filter.phase(orders[k] * frequency);
    }
    return new RippleLines(orders, frequency, less, later);
  }
}
