package corewright.measures.conformity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlobalRiskTest {

  /**
   * Deaver's table, printed to three decimals, as the tests of sandialabs/suncal quote it:
   * tolerance ± SL of the process deviation, u = SL/(2·TUR), acceptance at a factor of the
   * tolerance. Further digits from scipy.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 4, 1,    0.008, 0.015, 0.008006, 0.014851",
    "2, 2, 0.91, 0.008, 0.066, 0.008052, 0.066106",
  })
  void agreesWithDeaver(
      double limit,
      double ratio,
      double factor,
      double printedConsumer,
      double printedProducer,
      double consumer,
      double producer) {
    Tolerance accepts = new Tolerance(-limit * factor, limit * factor);
    GlobalRisk risk =
        GlobalRisk.of(0, 1, limit / (2 * ratio), new Tolerance(-limit, limit), accepts);
    assertEquals(printedConsumer, risk.consumer(), 0.0005);
    assertEquals(printedProducer, risk.producer(), 0.0005);
    assertEquals(consumer, risk.consumer(), 5.1e-7);
    assertEquals(producer, risk.producer(), 5.1e-7);
  }

  /**
   * Resistors within ± 0.2, process 0.12, u 0.04: inputs of JCGM 106 from memory; scipy, 6 digits.
   * The guard band is a multiple of U = 0.08.
   */
  @ParameterizedTest
  @CsvSource({"0, 0.018942, 0.037208", "0.5, 0.004334, 0.114657", "1, 0.000469, 0.247670"})
  void agreesWithScipy(double perU, double consumer, double producer) {
    Tolerance conforms = new Tolerance(-0.2, 0.2);
    GlobalRisk risk = GlobalRisk.of(0, 0.12, 0.04, conforms, conforms.guarded(perU * 0.08));
    assertEquals(consumer, risk.consumer(), 5.1e-7);
    assertEquals(producer, risk.producer(), 5.1e-7);
  }

  /** Closed form: with one limit through the middle, each risk is arctan(u/spread)/(2π). */
  @Test
  void agreesWithTheClosedFormOfALimitInTheMiddle() {
    Tolerance one = Tolerance.atLeast(46.5);
    GlobalRisk risk = GlobalRisk.of(46.5, 0.3, 0.1, one, one);
    double exact = Math.atan(0.1 / 0.3) / (2 * Math.PI);
    assertEquals(exact, risk.consumer(), 1e-14);
    assertEquals(exact, risk.producer(), 1e-14);
  }

  /** A measurement that never errs, nearly: no risk, and no wall in the integrand. */
  @Test
  void vanishesWithTheUncertainty() {
    Tolerance conforms = new Tolerance(-1, 1.5);
    GlobalRisk risk = GlobalRisk.of(0.2, 1, 1e-6, conforms, conforms);
    assertEquals(0, risk.consumer(), 1e-6);
    assertEquals(0, risk.producer(), 1e-6);
  }
}
