package corewright.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConformityTest {

  /** JCGM 106:2012, worked examples; printed values from memory, exact ones recomputed (scipy). */
  @ParameterizedTest
  @CsvSource({
    // value, u, low, high, exact, printed with 2 decimals
    "509.7, 8.6, 490, Infinity, 0.98900955, 0.99", // one-sided lower: burst pressure, kPa
    "-5.47, 0.05, -Infinity, -5.40, 0.91924334, 0.92", // one-sided upper: breakdown voltage, V
    "13.6, 1.8, 12.5, 16.3, 0.66262979, 0.66", // two-sided: kinematic viscosity, mm²/s
  })
  void theWorkedExamplesOfJcgm106(
      double value, double u, double low, double high, double exact, double printed) {
    Measurement m = new Measurement(value, u, Unit.ONE);
    double p =
        Double.isInfinite(high)
            ? Conformity.atLeast(m, low)
            : Double.isInfinite(low) ? Conformity.atMost(m, high) : Conformity.within(m, low, high);
    assertEquals(exact, p, 5e-9);
    assertEquals(printed, p, 0.005);
  }

  /**
   * Probability of not conforming for a reading on the acceptance limit, which lies w inside the
   * tolerance limit. ILAC-G8:09/2019, table of rules (0, 0.83 U, 1 U, 1.5 U); the rest closed form.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0.5, 1e-15", // simple acceptance: under 50 %
    "1, 0.15866, 5e-6", // w = u
    "1.64, 0.05050, 5e-6",
    "1.645, 0.0499849, 5e-8", // scipy 1.x norm.sf
    "1.66, 0.0485, 5e-5", // 0.83 U: under 5 %
    "2, 0.022750, 5e-7", // w = U: under 2.5 %
    "3, 0.00135, 5e-6", // 1.5 U: under 0.16 %
  })
  void theRiskOfAGuardBand(double guard_u, double risk, double tolerance) {
    Measurement atAcceptanceLimit = new Measurement(46.5 + guard_u * 0.04, 0.04, Unit.VOLT);
    assertEquals(risk, 1 - Conformity.atLeast(atAcceptanceLimit, 46.5), tolerance);
  }

  @Test
  void withoutUncertaintyTheLimitItselfConforms() {
    Measurement exact = new Measurement(46.5, 0, Unit.VOLT);
    assertEquals(1, Conformity.atLeast(exact, 46.5));
    assertEquals(1, Conformity.atMost(exact, 46.5));
    assertEquals(0, Conformity.atLeast(exact, 46.6));
    assertEquals(0, Conformity.within(exact, 46.6, 46.7));
  }

  @Test
  void limitsInTheWrongOrderAreRefused() {
    Measurement m = new Measurement(1, 1, Unit.VOLT);
    assertThrows(IllegalArgumentException.class, () -> Conformity.within(m, 2, 1));
  }
}
