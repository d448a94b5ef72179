package corewright.measures.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Unit;
import corewright.measures.statistics.Interval;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Tolerances are four standard deviations of the drawing itself, or less. */
class MonteCarloTest {
  private static final int TRIALS = 200_000;
  private static final Budget.Model SUM = x -> x[0] + x[1] + x[2] + x[3];

  /** JCGM 101:2008, 9.2.2: four normal inputs; u = 2.00, 95 % within ± 3.92. */
  @Test
  void addsNormalInputs() {
    MonteCarlo drawn =
        MonteCarlo.of(SUM, four(i -> Input.known("x" + i, 0, 1, Unit.ONE)), TRIALS, 1);
    assertEquals(0, drawn.mean(), 0.018);
    assertEquals(2, drawn.u(), 0.013);
    assertEquals(3.92, drawn.symmetricInterval(0.95).high(), 0.04);
    assertEquals(-3.92, drawn.shortestInterval(0.95).low(), 0.08);
  }

  /**
   * JCGM 101:2008, 9.2.3: four rectangular inputs of the same u; ± 3.88, where the budget says 3.92
   * (printed, from memory). The sum of four has a closed form: ± 3.87940674 (mpmath).
   */
  @Test
  void addsRectangularInputs() {
    Inputs inputs =
        four(i -> Input.within("x" + i, 0, Math.sqrt(3), Distribution.RECTANGULAR, Unit.ONE));
    MonteCarlo drawn = MonteCarlo.of(SUM, inputs, TRIALS, 2);
    assertEquals(2, drawn.u(), 0.012);
    assertEquals(3.87940674, drawn.symmetricInterval(0.95).high(), 0.03);
    assertEquals(3.92, Budget.of(SUM, Unit.ONE, inputs).expanded(0.95), 0.005);
  }

  /**
   * JCGM 101:2008, 9.2.4: one rectangular input ten times as wide; [−16.99, 16.99], where the
   * budget says 19.9 (printed, from memory).
   */
  @Test
  void letsOneRectangularInputDominate() {
    Inputs inputs =
        four(
            i ->
                Input.within(
                    "x" + i,
                    0,
                    (i == 3 ? 10 : 1) * Math.sqrt(3),
                    Distribution.RECTANGULAR,
                    Unit.ONE));
    Interval interval = MonteCarlo.of(SUM, inputs, TRIALS, 3).symmetricInterval(0.95);
    assertEquals(-16.99, interval.low(), 0.06);
    assertEquals(16.99, interval.high(), 0.06);
    assertEquals(19.9, Budget.of(SUM, Unit.ONE, inputs).expanded(0.95), 0.05);
  }

  /**
   * The end gauge of JCGM 100, H.1: what the first order leaves out (H.1.7: 11.7 nm and 1.7 nm)
   * raises 31.66 nm to 33.81 nm, printed 34.
   */
  @Test
  void findsTheSecondOrderOfTheEndGauge() {
    MonteCarlo drawn =
        MonteCarlo.of(GuideExampleTest.END_GAUGE, GuideExampleTest.endGauge(), TRIALS, 4);
    assertEquals(50_000_838, drawn.mean(), 0.3);
    assertEquals(33.80654542952218, drawn.u(), 0.22);
  }

  /** Closed form: u of a + b and a − b with r = 0.6 is √(2 ± 1.2). */
  @Test
  void drawsCorrelatedInputs() {
    Inputs inputs =
        Inputs.of(
            List.of(Input.known("a", 1, 1, Unit.ONE), Input.known("b", 2, 1, Unit.ONE)),
            List.of(new Correlation("a", "b", 0.6)));
    assertEquals(Math.sqrt(3.2), MonteCarlo.of(x -> x[0] + x[1], inputs, TRIALS, 5).u(), 0.012);
    assertEquals(Math.sqrt(0.8), MonteCarlo.of(x -> x[0] - x[1], inputs, TRIALS, 5).u(), 0.006);
  }

  /** JCGM 101:2008, 6.4.9.3 and 6.4.6, 6.4.5: variances ν/(ν−2), a²/2 and a²/6; bounds hold. */
  @Test
  void drawsEachDistribution() {
    Input student =
        new Input("t", Input.known("t", 0, 1, Unit.ONE).estimate(), 10, Distribution.STUDENT);
    assertEquals(
        Math.sqrt(10 / 8.0),
        MonteCarlo.of(x -> x[0], Inputs.independent(student), TRIALS, 6).u(),
        0.012);
    for (Distribution bounded :
        List.of(Distribution.ARCSINE, Distribution.TRIANGULAR, Distribution.RECTANGULAR)) {
      Inputs one = Inputs.independent(Input.within("x", 5, 2, bounded, Unit.ONE));
      MonteCarlo drawn = MonteCarlo.of(x -> x[0], one, TRIALS, 7);
      assertEquals(bounded.u(2), drawn.u(), 0.006);
      Interval all = drawn.symmetricInterval(0.999999999);
      assertEquals(5, (all.low() + all.high()) / 2, 0.02);
      assertEquals(4, all.high() - all.low(), 0.03);
    }
  }

  /**
   * Closed form: |x| of a normal x is skewed; the shortest 95 % begins at 0, the other does not.
   */
  @Test
  void shortestIntervalOfASkewedResult() {
    Inputs one = Inputs.independent(Input.known("x", 0, 1, Unit.ONE));
    MonteCarlo drawn = MonteCarlo.of(x -> Math.abs(x[0]), one, TRIALS, 8);
    assertEquals(0, drawn.shortestInterval(0.95).low(), 1e-2);
    assertEquals(1.95996, drawn.shortestInterval(0.95).high(), 0.03);
    assertEquals(0.0313380, drawn.symmetricInterval(0.95).low(), 0.003); // Φ⁻¹(0.5125)
    assertEquals(2.2414027, drawn.symmetricInterval(0.95).high(), 0.03); // Φ⁻¹(0.9875)
  }

  @Test
  void sameSeedSameNumbers() {
    Inputs inputs = four(i -> Input.known("x" + i, 0, 1, Unit.ONE));
    assertEquals(MonteCarlo.of(SUM, inputs, 1000, 9).u(), MonteCarlo.of(SUM, inputs, 1000, 9).u());
    assertNotEquals(
        MonteCarlo.of(SUM, inputs, 1000, 9).u(), MonteCarlo.of(SUM, inputs, 1000, 10).u());
  }

  @Test
  void refusesWhatItCannotDraw() {
    Input a = Input.within("a", 0, 1, Distribution.RECTANGULAR, Unit.ONE);
    Input b = Input.known("b", 0, 1, Unit.ONE);
    Inputs together = Inputs.of(List.of(a, b), List.of(new Correlation("a", "b", 0.5)));
    assertThrows(IllegalArgumentException.class, () -> MonteCarlo.of(x -> x[0], together, 1000, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> MonteCarlo.of(x -> x[0], Inputs.independent(b), 10, 1));
  }

  private static Inputs four(IntFunction<Input> input) {
    return Inputs.of(IntStream.range(0, 4).mapToObj(input).toList(), List.of());
  }
}
