package corewright.measures.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class TheilSenTest {

  /** scipy 1.17 {@code theilslopes} on the thermometer of JCGM 100, H.3. */
  @Test
  void agreesWithScipyOnTheThermometer() {
    double[] t = Reference.column("/reference/gum_h3.csv", 0);
    double[] b = Reference.column("/reference/gum_h3.csv", 1);
    TheilSen fit = TheilSen.of(t, b, 0.95);
    assertEquals(0.002010050251256281, fit.slope(), 1e-17);
    assertEquals(-0.20923919597989948, fit.intercept(), 1e-15);
    assertEquals(0, fit.interval().low());
    assertEquals(0.00401337792642141, fit.interval().high(), 1e-17);
  }

  /** scipy 1.17 {@code theilslopes}; many ties. */
  @Test
  void agreesWithScipyOnTheNile() {
    TheilSen fit = TheilSen.of(Nile.years(), Nile.FLOW, 0.95);
    assertEquals(-2.6, fit.slope());
    assertEquals(1022.2, fit.intercept(), 1e-12);
    assertEquals(-3.627906976744186, fit.interval().low(), 1e-15);
    assertEquals(-1.4285714285714286, fit.interval().high(), 1e-15);
  }

  /**
   * A quarter of the points is lost to spikes on one side: the slope stays; least squares' does
   * not.
   */
  @Test
  void isNotPulledBySpikes() {
    Well19937c random = new Well19937c(6);
    double[] x = new double[400];
    double[] y = new double[400];
    for (int i = 0; i < x.length; i++) {
      x[i] = i;
      y[i] = 47 - 0.001 * i + 0.01 * random.nextGaussian();
      y[i] += i > 300 && i % 4 != 0 ? 5 : 0;
    }
    TheilSen fit = TheilSen.of(x, y, 0.95);
    assertEquals(-0.001, fit.slope(), 4e-4);
  }

  /** 3,000 seeded lines: the interval of 95 % covers 94 to 96.5 %. */
  @Test
  void coversTheTruthAsOftenAsStated() {
    Well19937c random = new Well19937c(12);
    int covered = 0;
    double[] x = new double[60];
    double[] y = new double[60];
    int runs = 3000;
    for (int run = 0; run < runs; run++) {
      for (int i = 0; i < x.length; i++) {
        x[i] = i;
        y[i] = 0.05 * i + random.nextGaussian();
      }
      covered += TheilSen.of(x, y, 0.95).interval().contains(0.05) ? 1 : 0;
    }
    assertEquals(0.9525, (double) covered / runs, 0.0125);
  }

  @Test
  void refusesWhatHasNoSlope() {
    double[] two = {1, 2};
    assertThrows(IllegalArgumentException.class, () -> TheilSen.of(two, two, 0.95));
    double[] same = {1, 1, 1};
    assertThrows(IllegalArgumentException.class, () -> TheilSen.of(same, same, 0.95));
    double[] many = new double[TheilSen.MOST_POINTS + 1];
    assertThrows(IllegalArgumentException.class, () -> TheilSen.of(many, many, 0.95));
  }
}
