package corewright.measures.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RelaxationTest {

  /** Closed form, up and down, long and short against τ, in units far from 1. */
  @ParameterizedTest
  @CsvSource({
    "48, 0, 2.2, 10",
    "48, 0, 2.2, 1",
    "23, 68.5, 340, 1800",
    "1e-6, 3e-6, 1e-5, 3e-5",
    "-5, 100000, 5, 2"
  })
  void findsWhatWasPutIn(double start, double end, double tau, double span) {
    double[] t = times(40, span);
    double[] y = values(t, start, end, tau);
    Relaxation free = Relaxation.of(t, y);
    double range = Math.abs(end - start);
    assertEquals(1, free.tau_s() / tau, 1e-9);
    assertEquals(start, free.start(), 1e-10 * range);
    assertEquals(end, free.end(), 1e-9 * range);
    assertEquals(y[20], free.at(t[20] - t[0]), 1e-12 * range);
    Relaxation known = Relaxation.towards(end, t, y);
    assertEquals(1, known.tau_s() / tau, 1e-12);
    assertEquals(start, known.start(), 1e-12 * range);
    assertEquals(0, known.uEnd());
  }

  /** 400 seeded records: the scatter of τ and of both ends is what the fits say. */
  @Test
  void scattersAsItSays() {
    RandomGenerator random = new Well19937c(9);
    SummaryStatistics tau = new SummaryStatistics();
    SummaryStatistics end = new SummaryStatistics();
    SummaryStatistics start = new SummaryStatistics();
    double u = 0;
    int covered = 0;
    Relaxation fit = Relaxation.of(times(9, 1), values(times(9, 1), 1, 0, 0.3));
    double[] t = times(100, 900);
    for (int run = 0; run < 400; run++) {
      double[] y = values(t, 23, 60, 300);
      for (int i = 0; i < y.length; i++) {
        y[i] += 0.4 * random.nextGaussian();
      }
      fit = Relaxation.of(t, y);
      tau.addValue(fit.tau_s());
      end.addValue(fit.end());
      start.addValue(fit.start());
      u += fit.uTau_s() / 400;
      covered += Math.abs(fit.tau_s() - 300) <= 1.984 * fit.uTau_s() ? 1 : 0; // t of 97
    }
    assertEquals(1, tau.getStandardDeviation() / u, 0.11);
    assertEquals(1, end.getStandardDeviation() / fit.uEnd(), 0.15);
    assertEquals(1, start.getStandardDeviation() / fit.uStart(), 0.15);
    assertEquals(0.4, fit.residualSd(), 0.1);
    assertEquals(0.9525, covered / 400.0, 0.033);
  }

  /** A straight line has no time constant: whatever is said must say that it is not known. */
  @Test
  void saysWhenTheRecordIsTooShort() {
    RandomGenerator random = new Well19937c(10);
    double[] t = times(50, 1);
    double[] y = new double[50];
    for (int i = 0; i < y.length; i++) {
      y[i] = t[i] + 0.1 * random.nextGaussian();
    }
    try {
      Relaxation fit = Relaxation.of(t, y);
      assertTrue(fit.uTau_s() > fit.tau_s() / 2, fit.toString());
    } catch (IllegalArgumentException refused) {
      assertTrue(refused.getMessage().length() > 20);
    }
  }

  @Test
  void refusesWhatDoesNotMove() {
    double[] t = times(10, 1);
    assertThrows(IllegalArgumentException.class, () -> Relaxation.of(t, new double[10]));
    assertThrows(IllegalArgumentException.class, () -> Relaxation.of(t, new double[9]));
    assertThrows(
        IllegalArgumentException.class, () -> Relaxation.of(new double[10], values(t, 1, 0, 1)));
  }

  private static double[] times(int n, double span) {
    double[] t = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = 7 + span * i / (n - 1);
    }
    return t;
  }

  private static double[] values(double[] t, double start, double end, double tau) {
    double[] y = new double[t.length];
    for (int i = 0; i < y.length; i++) {
      y[i] = end + (start - end) * Math.exp(-(t[i] - t[0]) / tau);
    }
    return y;
  }
}
