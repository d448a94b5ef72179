package corewright.measures.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetTest {
  private static final Input A = Input.known("a", 5, 0.3, Unit.VOLT);
  private static final Input B = Input.known("b", 2, 0.4, Unit.VOLT);

  /** JCGM 100, 5.2.2 note 1: with r = +1 contributions add up plainly, with r = −1 they cancel. */
  @ParameterizedTest
  @CsvSource({"0, 0.5", "1, 0.1", "-1, 0.7", "0.5, 0.36055512754639896"})
  void differenceOfCorrelatedInputs(double r, double u) {
    Inputs inputs = Inputs.of(List.of(A, B), List.of(new Correlation("a", "b", r)));
    assertEquals(u, Budget.of(3, Unit.VOLT, inputs, 1, -1).result().u(), 1e-15);
  }

  /** JCGM 100, 4.3.7 to 4.3.9 and F.2.2: a/√3, a/√6, a/√2 (the last common practice). */
  @ParameterizedTest
  @CsvSource({
    "RECTANGULAR, 0.5773502691896258",
    "TRIANGULAR, 0.4082482904638631",
    "ARCSINE, 0.7071067811865475",
  })
  void boundsBecomeStandardUncertainties(Distribution distribution, double u) {
    assertEquals(u, Input.within("x", 0, 1, distribution, Unit.ONE).estimate().u(), 1e-15);
    assertEquals(1, distribution.halfWidth(u), 1e-15);
  }

  /** Closed form: slopes of a polynomial of the fourth degree, found from five points. */
  @Test
  void findsSensitivities() {
    Inputs inputs = Inputs.independent(A, B);
    Budget budget = Budget.of(x -> Math.pow(x[0], 4) * x[1], Unit.ONE, inputs);
    assertEquals(4 * 125 * 2, budget.sensitivity(0), 1e-9);
    assertEquals(625, budget.sensitivity(1), 1e-9);
    assertEquals(Math.hypot(300, 250), budget.result().u(), 1e-9);
  }

  /**
   * JCGM 100, G.4.1: equal contributions of ν each make 2ν; one alone keeps its own. Together with
   * a correlation the two count as one of the lesser ν.
   */
  @Test
  void countsDegreesOfFreedom() {
    Input a = Input.known("a", 0, 1, Unit.VOLT).withFreedom(6);
    Input b = Input.known("b", 0, 1, Unit.VOLT).withFreedom(6);
    assertEquals(
        12, Budget.of(0, Unit.VOLT, Inputs.independent(a, b), 1, 1).effectiveFreedom(), 1e-9);
    assertEquals(6, Budget.of(0, Unit.VOLT, Inputs.independent(a), 3).effectiveFreedom(), 1e-9);
    Inputs together = Inputs.of(List.of(a, b), List.of(new Correlation("a", "b", 0.2)));
    assertEquals(6, Budget.of(0, Unit.VOLT, together, 1, 1).effectiveFreedom(), 1e-9);
    Budget known = Budget.of(0, Unit.VOLT, Inputs.independent(A, B), 1, 1);
    assertEquals(Double.POSITIVE_INFINITY, known.effectiveFreedom());
    assertEquals(1.959963984540054, known.coverageFactor(0.95), 1e-9);
  }

  /**
   * JCGM 100, table G.2: t of 95 % for 1, 4, 10 and 50 degrees of freedom; fractions round down.
   */
  @ParameterizedTest
  @CsvSource({"1, 12.71", "4, 2.78", "4.99, 2.78", "10, 2.23", "50, 2.01"})
  void coversWithStudentsT(double freedom, double k) {
    Input a = Input.known("a", 0, 1, Unit.VOLT).withFreedom(freedom);
    Budget budget = Budget.of(0, Unit.VOLT, Inputs.independent(a), 1);
    assertEquals(k, budget.coverageFactor(0.95), 0.005);
  }

  /** By hand: u² = 4e-6 + 33.33e-6 + 6.25e-6 V², ν = 40·u⁴/0.002⁴. */
  @Test
  void printsLineByLine() {
    Inputs inputs =
        Inputs.of(
            List.of(
                Input.known("scatter", 47.31, 0.002, Unit.VOLT).withFreedom(40),
                Input.within("resolution", 0, 0.01, Distribution.RECTANGULAR, Unit.VOLT),
                Input.known("sense contact", 0.004, 0.001, Unit.OHM)),
            List.of());
    Budget budget = Budget.of(47.31, Unit.VOLT, inputs, 1, 1, 2.5);
    assertEquals(
        """
        quantity       estimate        u               distribution    ν               sensitivity     u(y)            share
        scatter        47.31 V         0.002 V         normal          40              1               0.002 V         9.18 %
        resolution     0 V             0.00577 V       rectangular     ∞               1               0.00577 V       76.5 %
        sense contact  0.004 Ω         0.001 Ω         normal          ∞               2.5 V/Ω         0.0025 V        14.3 %
        result 47.31 V, u = 0.0066 V, ν = 4750, k = 1.96, U = 0.0129 V (95 %)\
        """,
        String.join("\n", BudgetText.lines(budget, 0.95)));
  }

  @Test
  void refusesContradictions() {
    assertThrows(IllegalArgumentException.class, () -> Inputs.independent(A, A));
    assertThrows(
        IllegalArgumentException.class,
        () -> Inputs.of(List.of(A, B), List.of(new Correlation("a", "c", 0.5))));
    assertThrows(IllegalArgumentException.class, () -> new Correlation("a", "b", 1.01));
    assertThrows(IllegalArgumentException.class, () -> new Correlation("a", "a", 1));
    assertThrows(IllegalArgumentException.class, () -> A.withFreedom(0));
    assertThrows(IllegalArgumentException.class, () -> Distribution.NORMAL.u(1));
    Inputs one = Inputs.independent(A);
    assertThrows(IllegalArgumentException.class, () -> Budget.of(0, Unit.VOLT, one, 1, 2));
    Budget here = Budget.of(0, Unit.VOLT, one, 1);
    Budget elsewhere = Budget.of(0, Unit.VOLT, Inputs.independent(B), 1);
    assertThrows(IllegalArgumentException.class, () -> here.covariance(elsewhere));
  }

  /** t = z + (z³ + z)/(4ν) for large ν (Abramowitz and Stegun 26.7.5). */
  @Test
  void manyDegreesOfFreedomComeToTheNormalDistribution() {
    double z = 1.959963984540054;
    for (double freedom : new double[] {1e3, 1e4, 1e5, 1e6, 1e7, 1e9, 1e13}) {
      Inputs inputs = Inputs.independent(Input.known("x", 1, 0.1, Unit.VOLT).withFreedom(freedom));
      double k = Budget.of(1, Unit.VOLT, inputs, 1).coverageFactor(0.95);
      assertEquals(z + (z * z * z + z) / 4 / freedom, k, 3e-6, "ν = " + freedom);
    }
  }
}
