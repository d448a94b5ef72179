package corewright.measures.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.conformity.Tolerance;
import corewright.measures.control.IndividualsChart.Signal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class IndividualsChartTest {
  private static final double[] FLOW = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

  /** NIST/SEMATECH e-Handbook 6.3.2.2: ten flow rates; printed limits, from memory. */
  @Test
  void agreesWithTheHandbook() {
    IndividualsChart chart = IndividualsChart.of(FLOW);
    assertEquals(50.81, chart.centre(), 1e-12);
    assertEquals(1.8778, chart.meanMovingRange(), 0.00005);
    assertEquals(55.8041, chart.upperLimit(), 0.002); // printed with 1.128 for d2
    assertEquals(45.8159, chart.lowerLimit(), 0.002);
    assertEquals(3.267 * 1.8778, chart.movingRangeLimit(), 0.001);
    assertEquals(List.of(), chart.signals(FLOW));
  }

  /** One case for each rule, and its neighbour that is still quiet. */
  @Test
  void eachRuleHasItsSignal() {
    IndividualsChart unit = new IndividualsChart(0, ChartConstants.of(2).d2());
    assertEquals(1, unit.sd(), 1e-15);
    assertSignals(unit, RunRule.BEYOND_THREE, 2, 0, 0, 3.1);
    assertSignals(unit, RunRule.TWO_BEYOND_TWO, 2, -2.1, 0, -2.1);
    assertSignals(unit, RunRule.FOUR_BEYOND_ONE, 4, 1.1, 1.1, -0.5, 1.1, 1.1);
    assertSignals(unit, RunRule.EIGHT_ON_ONE_SIDE, 7, 0.1, 0.2, 0.1, 0.3, 0.1, 0.2, 0.1, 0.1);
    assertEquals(List.of(), unit.signals(2.9, -2.1, 0, 2.1)); // two beyond, but on two sides
    assertEquals(List.of(), unit.signals(1.1, 1.1, 0, 0, 1.1, 1.1));
    assertEquals(List.of(), unit.signals(1, 1, 1, 0, 1, 1, 1, 1, 1)); // the centre breaks a run
    assertEquals(List.of(), unit.signals(2.1, -2.1, 0.5, -0.5, 0, 0, 0));
  }

  private static void assertSignals(IndividualsChart chart, RunRule rule, int at, double... z) {
    assertEquals(List.of(new Signal(at, rule)), chart.signals(z));
  }

  /** Closed form: 1/(2·Φ(−3)) = 370.4 points to a false alarm; 5,000 seeded runs. */
  @Test
  void firstRuleAloneIsQuietFor370Points() {
    assertEquals(370.3983, runLength(5000, RunRule.BEYOND_THREE::equals), 15.7);
  }

  /** Champ and Woodall 1987: 91.75 points with all four (from memory); 10,000 seeded runs. */
  @Test
  void allRulesAreQuietFor92Points() {
    assertEquals(91.75, runLength(10_000, RunRule.HANDBOOK::contains), 2.8);
  }

  /** Of the 6! orders of six values two rise or fall all the way: 1 in 360; 200,000 windows. */
  @Test
  void sixTrendByChanceOnceIn360() {
    RandomGenerator random = new Well19937c(9);
    double[] z = new double[200_005];
    Arrays.setAll(z, i -> random.nextGaussian());
    IndividualsChart unit = new IndividualsChart(0, ChartConstants.of(2).d2());
    int trends = unit.signals(EnumSet.of(RunRule.SIX_TRENDING), z).size();
    assertEquals(200_000 / 360.0, trends, 4 * Math.sqrt(200_000 / 360.0));
    assertEquals(
        List.of(new Signal(5, RunRule.SIX_TRENDING)),
        unit.signals(RunRule.BENCH, 0.5, 0.3, 0.2, -0.1, -0.2, -0.4));
    assertEquals(List.of(), unit.signals(RunRule.BENCH, 0.5, 0.3, 0.2, -0.1, -0.2, -0.2, -0.3));
  }

  private static double runLength(int runs, Predicate<RunRule> used) {
    RandomGenerator random = new Well19937c(4);
    List<RunRule> rules = List.of(RunRule.values()).stream().filter(used).toList();
    double[] z = new double[8];
    long points = 0;
    for (int run = 0; run < runs; run++) {
      boolean alarm = false;
      for (int n = 1; !alarm; n++) {
        System.arraycopy(z, 1, z, 0, 7);
        z[7] = random.nextGaussian();
        if (n == 1) {
          Arrays.fill(z, 0, 7, 0);
        }
        points++;
        alarm = rules.stream().anyMatch(rule -> rule.brokenAt(z, 7));
      }
    }
    return (double) points / runs;
  }

  /** NIST/SEMATECH e-Handbook 6.1.6 (from memory): Cp 1.0, Cpk 0.6667. */
  @Test
  void capabilityOfTheHandbook() {
    Capability c = Capability.of(16, 2, new Tolerance(8, 20));
    assertEquals(1.0, c.cp(), 1e-15);
    assertEquals(0.6667, c.cpk(), 0.00005);
  }

  @Test
  void refusesABaselineThatSaysNothing() {
    assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(1, 2, 3));
    assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(new double[12]));
  }
}
