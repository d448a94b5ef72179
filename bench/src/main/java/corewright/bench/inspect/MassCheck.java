package corewright.bench.inspect;

import corewright.bench.identify.Quantified;
import corewright.measures.Figures;
import corewright.profiles.Variant;

/**
 * What a unit weighs against what its build weighs. Uncertainties are expanded, k = 2, and add up
 * in squares (JCGM 100, 5.1.2): that of the scale, and the spread from unit to unit.
 *
 * @param measured_g mass, g
 * @param measuredU_g its U, g
 * @param variant the build that it is held against
 * @param expected_g mean mass of that build, g
 * @param expectedU_g twice the standard deviation from unit to unit, g
 */
public record MassCheck(
    double measured_g, double measuredU_g, String variant, double expected_g, double expectedU_g) {

  /** From this share on a difference means something: water, mud, another filling. */
  private static final double SHARE = 0.03;

  static MassCheck of(Quantified mass, String variant, Variant.Mass expected) {
    return new MassCheck(
        mass.value(), mass.expanded(), variant, expected.expected_g(), 2 * expected.spread_g());
  }

  public double difference_g() {
    return measured_g - expected_g;
  }

  public double differenceU_g() {
    return Math.hypot(measuredU_g, expectedU_g);
  }

  /** Whether it is heavier or lighter than its build by more than the uncertainty and 3 %. */
  public boolean differs() {
    double difference_g = Math.abs(difference_g());
    return difference_g > differenceU_g() && difference_g > SHARE * expected_g;
  }

  /** One sentence. */
  public String words() {
    String held =
        grams(measured_g)
            + " ± "
            + grams(measuredU_g)
            + " g against "
            + grams(expected_g)
            + " ± "
            + grams(expectedU_g)
            + " g for "
            + variant
            + ": ";
    if (!differs()) {
      return held + "as that build weighs.";
    }
    String by = grams(Math.abs(difference_g())) + " ± " + grams(differenceU_g()) + " g ";
    return held
        + by
        + (difference_g() > 0
            ? "too heavy. Water, mud, a bracket, another filling, or another build."
            : "too light. Parts are missing, or it is another build.");
  }

  private static String grams(double value) {
    return Figures.number(value, 0);
  }
}
