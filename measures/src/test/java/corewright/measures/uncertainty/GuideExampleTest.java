package corewright.measures.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Reference;
import corewright.measures.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The worked examples of JCGM 100:2008. Inputs of H.1 to H.3 as the documentation of MSLNZ/GTC
 * holds them; printed results of H.1 and G.4.1 from memory, recomputed in Python from unrounded
 * numbers.
 */
class GuideExampleTest {
  private static final Unit NM =
      Unit.ONE; // lengths in nm, angles in rad: the unit is not the point

  /** H.1: end gauge, l = ls + d − ls·(δα·θ + αs·δθ), in nm. */
  static final Budget.Model END_GAUGE =
      x -> x[0] + x[1] - x[0] * (x[2] * (x[5] + x[6]) + x[4] * x[3]);

  static Inputs endGauge() {
    Budget comparison =
        Budget.of(
            215,
            NM,
            Inputs.independent(
                Input.known("repeated", 215, 5.8, NM).withFreedom(24),
                Input.known("comparator, random", 0, 3.9, NM).withFreedom(5),
                Input.known("comparator, systematic", 0, 6.7, NM).withFreedom(8)),
            1,
            1,
            1);
    assertEquals(9.7, comparison.result().u(), 0.05); // printed
    assertEquals(9.6819, comparison.result().u(), 5e-5);
    assertEquals(25.447, comparison.effectiveFreedom(), 5e-4); // printed 25.6 from the rounded 9.7
    return Inputs.independent(
        Input.known("standard", 50_000_623, 25, NM).withFreedom(18),
        new Input(
            "difference", comparison.result(), comparison.effectiveFreedom(), Distribution.NORMAL),
        Input.within("δα", 0, 1e-6, Distribution.RECTANGULAR, NM).withFreedom(50),
        Input.within("δθ", 0, 0.05, Distribution.RECTANGULAR, NM).withFreedom(2),
        Input.within("αs", 11.5e-6, 2e-6, Distribution.RECTANGULAR, NM),
        Input.known("θ, mean", -0.1, 0.2, NM),
        Input.within("θ, cyclic", 0, 0.5, Distribution.ARCSINE, NM));
  }

  @Test
  void endGaugeH1() {
    Budget budget = Budget.of(END_GAUGE, NM, endGauge());
    assertEquals(50_000_838, budget.result().value(), 1e-7);
    double[] contributions = {25, 9.6819, 2.8868, 16.599, 0, 0, 0};
    for (int i = 0; i < contributions.length; i++) {
      assertEquals(contributions[i], budget.contribution(i), 5e-4, budget.inputs().get(i).name());
    }
    assertEquals(31.6639, budget.result().u(), 5e-5); // printed 31.7, then 32
    assertEquals(
        16.7519, budget.effectiveFreedom(), 5e-5); // printed 16.7; 17.5 from the rounded 32
    assertEquals(2.92, budget.coverageFactor(0.99), 0.005); // printed, with 16
    assertEquals(2.9207816224251, budget.coverageFactor(0.99), 1e-9); // scipy
    assertEquals(92.48327620212403, budget.expanded(0.99), 1e-4); // printed 93, from 32
  }

  /** H.2: R, X and Z of one current and voltage; approach 1, correlated inputs. */
  @Test
  void simultaneousResistanceAndReactanceH2() {
    double[] v = Reference.column("/reference/gum_h2.csv", 0);
    double[] i = Reference.column("/reference/gum_h2.csv", 1);
    double[] phi = Reference.column("/reference/gum_h2.csv", 2);
    for (int k = 0; k < i.length; k++) {
      i[k] /= 1000;
    }
    Inputs inputs =
        Inputs.of(
            List.of(
                Input.repeated("V", TypeA.independent(v), Unit.VOLT),
                Input.repeated("I", TypeA.independent(i), Unit.AMPERE),
                Input.repeated("φ", TypeA.independent(phi), Unit.ONE)),
            List.of(
                Correlation.ofPairs("V", v, "I", i),
                Correlation.ofPairs("V", v, "φ", phi),
                Correlation.ofPairs("I", i, "φ", phi)));
    assertEquals(-0.3553, inputs.correlation(0, 1), 5e-5); // printed −0.36
    assertEquals(0.8576, inputs.correlation(0, 2), 5e-5); // printed 0.86
    assertEquals(-0.6451, inputs.correlation(1, 2), 5e-5); // printed −0.65

    Budget r = Budget.of(x -> x[0] / x[1] * Math.cos(x[2]), Unit.OHM, inputs);
    Budget x = Budget.of(q -> q[0] / q[1] * Math.sin(q[2]), Unit.OHM, inputs);
    Budget z = Budget.of(q -> q[0] / q[1], Unit.OHM, inputs);
    check(127.732, 0.071, r);
    check(219.847, 0.295, x); // unrounded 0.2956: the guide cuts it
    check(254.260, 0.236, z);
    assertEquals(127.732170, r.result().value(), 5e-7); // numpy, also below
    assertEquals(0.071071, r.result().u(), 5e-7);
    assertEquals(219.846512, x.result().value(), 5e-7);
    assertEquals(0.295582, x.result().u(), 5e-7);
    assertEquals(254.259702, z.result().value(), 5e-7);
    assertEquals(0.236336, z.result().u(), 5e-7);
    assertEquals(-0.588, r.correlation(x), 1e-3);
    assertEquals(-0.485, r.correlation(z), 1e-3);
    assertEquals(0.993, x.correlation(z), 1e-3);
    assertEquals(-0.5884, r.correlation(x), 5e-5);
    assertEquals(-0.4853, r.correlation(z), 5e-5);
    assertEquals(0.9925, x.correlation(z), 5e-5);
    // All three err together, each from five readings: four degrees of freedom, as H.2.4 counts.
    assertEquals(4, r.effectiveFreedom(), 1e-9);
  }

  /** H.2.4, approach 2: the same from the five sets one by one. */
  @Test
  void simultaneousResistanceSetBySetH2() {
    double[][] sets = Reference.table("/reference/gum_h2.csv");
    double[] r = new double[sets.length];
    double[] x = new double[sets.length];
    for (int k = 0; k < sets.length; k++) {
      r[k] = sets[k][0] / sets[k][1] * 1000 * Math.cos(sets[k][2]);
      x[k] = sets[k][0] / sets[k][1] * 1000 * Math.sin(sets[k][2]);
    }
    // Printed set by set: 127.67 127.89 127.51 127.71 127.88 (from memory).
    double[] printed = {127.67, 127.89, 127.51, 127.71, 127.88};
    assertArrayEquals(printed, r, 0.005);
    assertEquals(127.731630, TypeA.independent(r).mean(), 5e-7); // numpy, also below
    assertEquals(0.071274, TypeA.independent(r).u(), 5e-7);
    assertEquals(219.846895, TypeA.independent(x).mean(), 5e-7);
    assertEquals(0.295489, TypeA.independent(x).u(), 5e-7);
    assertEquals(-0.588277, Correlation.ofPairs("R", r, "X", x).r(), 5e-7);
  }

  /** G.4.1: y = b·x₁·x₂·x₃ with relative u of 0.25 %, 0.57 %, 0.82 % from 10, 5 and 15 readings. */
  @Test
  void welchSatterthwaiteG4() {
    Budget budget =
        Budget.of(
            100,
            Unit.PERCENT,
            Inputs.independent(
                Input.known("x1", 100, 0.25, Unit.PERCENT).withFreedom(9),
                Input.known("x2", 100, 0.57, Unit.PERCENT).withFreedom(4),
                Input.known("x3", 100, 0.82, Unit.PERCENT).withFreedom(14)),
            1,
            1,
            1);
    assertEquals(1.03, budget.result().u(), 0.005); // printed
    assertEquals(1.029466, budget.result().u(), 5e-7);
    assertEquals(19.0, budget.effectiveFreedom(), 0.05); // printed
    assertEquals(18.9987, budget.effectiveFreedom(), 5e-5);
    assertEquals(2.2, budget.expanded(0.95), 0.05); // printed
  }

  private static void check(double value, double u, Budget budget) {
    assertEquals(value, budget.result().value(), 0.0006);
    assertEquals(u, budget.result().u(), 0.0006);
  }
}
