package corewright.measures.meter;

import java.util.random.RandomGenerator;

/**
 * Gaussian noise of the first order: each value is {@code phi} of the last and something new.
 *
 * @param sd standard deviation of its values
 */
record ColouredNoise(double phi, double sd) {

  double[] drawn(int count, RandomGenerator random) {
    double[] x = new double[count];
    double fresh = Math.sqrt(1 - phi * phi) * sd;
    double state = sd * random.nextGaussian();
    for (int i = 0; i < count; i++) {
      state = phi * state + fresh * random.nextGaussian();
      x[i] = state;
    }
    return x;
  }
}
