package corewright.measures.statistics;

import static corewright.measures.StrdFile.assertDigits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.StrdFile;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneWayAnovaTest {

  /**
   * Certified by NIST; digits of F, of the residual deviation and of R². SmLs07 to 09 have 13
   * leading digits in common and differences of 0.1: a double keeps three to four digits of those,
   * and R 4.2 prints F of SmLs07 as 21.00077 too.
   */
  @ParameterizedTest
  @CsvSource({
    "SiRstv,  13",
    "AtmWtAg, 10.1",
    "SmLs01,  15",
    "SmLs02,  15",
    "SmLs03,  15",
    "SmLs04,  10.4",
    "SmLs05,  10.2",
    "SmLs06,  10.1",
    "SmLs07,  4.4",
    "SmLs08,  4.1",
    "SmLs09,  4.1",
  })
  void agreesWithNist(String name, double digits) {
    StrdFile file = StrdFile.read(name);
    OneWayAnova anova = OneWayAnova.of(groups(file.data()));
    double[] between = file.certified("Between");
    assertEquals(between[0], anova.betweenFreedom());
    assertEquals(file.certified("Within")[0], anova.withinFreedom());
    assertDigits(digits, anova.f(), between[3], "F");
    double[] sd = file.certified("Standard Deviation");
    assertDigits(digits, anova.residualSd(), sd[0], "residual deviation");
    assertDigits(digits, anova.rSquared(), file.certified("Certified R-Squared")[0], "R squared");
  }

  /** Exact arithmetic on the same doubles: what is left is our own error. */
  @ParameterizedTest
  @CsvSource({"SiRstv", "AtmWtAg", "SmLs01", "SmLs04", "SmLs07", "SmLs08"})
  void isExactForTheDoublesItIsGiven(String name) {
    List<double[]> groups = groups(StrdFile.read(name).data());
    MathContext precise = new MathContext(60);
    int n = groups.stream().mapToInt(g -> g.length).sum();
    BigDecimal grand = BigDecimal.ZERO;
    for (double[] group : groups) {
      grand = grand.add(sum(group));
    }
    grand = grand.divide(BigDecimal.valueOf(n), precise);
    BigDecimal between = BigDecimal.ZERO;
    BigDecimal within = BigDecimal.ZERO;
    for (double[] group : groups) {
      BigDecimal size = BigDecimal.valueOf(group.length);
      BigDecimal mean = sum(group).divide(size, precise);
      between = between.add(mean.subtract(grand).pow(2).multiply(size));
      for (double value : group) {
        within = within.add(new BigDecimal(value).subtract(mean).pow(2));
      }
    }
    OneWayAnova anova = OneWayAnova.of(groups);
    assertEquals(1, anova.betweenSquares() / between.doubleValue(), 1e-14);
    assertEquals(1, anova.withinSquares() / within.doubleValue(), 1e-14);
  }

  /** R 4.2: p of SiRstv is 0.34945. */
  @Test
  void givesTheProbabilityOfChance() {
    assertEquals(0.34945, OneWayAnova.of(groups(StrdFile.read("SiRstv").data())).p(), 5e-6);
  }

  @Test
  void refusesWhatHasNoScatterWithin() {
    assertThrows(
        IllegalArgumentException.class,
        () -> OneWayAnova.of(List.of(new double[] {1}, new double[] {2})));
    assertThrows(
        IllegalArgumentException.class, () -> OneWayAnova.of(List.of(new double[] {1, 2})));
    assertThrows(
        IllegalArgumentException.class,
        () -> OneWayAnova.of(List.of(new double[] {1, 2}, new double[] {})));
  }

  private static List<double[]> groups(double[][] rows) {
    Map<Double, List<Double>> byTreatment = new TreeMap<>();
    for (double[] row : rows) {
      byTreatment.computeIfAbsent(row[0], t -> new ArrayList<>()).add(row[1]);
    }
    return byTreatment.values().stream()
        .map(g -> g.stream().mapToDouble(Double::doubleValue).toArray())
        .toList();
  }

  private static BigDecimal sum(double[] group) {
    BigDecimal sum = BigDecimal.ZERO;
    for (double value : group) {
      sum = sum.add(new BigDecimal(value));
    }
    return sum;
  }
}
