package corewright.measures.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Reference;
import corewright.measures.statistics.Interval;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.distribution.WeibullDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class WeibullFitTest {
  private static final List<Lifetime> NIST = read("/reference/nist_weibull_8_4_1_3.csv");

  /** NIST/SEMATECH e-Handbook 8.4.1.3 prints shape 1.7208 and scale 606.5280. */
  @Test
  void agreesWithTheHandbook() {
    WeibullFit fit = WeibullFit.of(NIST);
    assertEquals(1.7208, fit.shape(), 1e-4);
    assertEquals(606.5280, fit.scale(), 1e-3);
    assertEquals(10, fit.failures());
    assertEquals(10, fit.suspensions());
  }

  /** R 4.2 {@code survreg}, whose log scale is −ln(shape); last digits from 40-digit mpmath. */
  @Test
  void agreesWithTwoPrograms() {
    WeibullFit fit = WeibullFit.of(NIST);
    assertEquals(1.720797260801357, fit.shape(), 1e-13);
    assertEquals(606.5275580035721, fit.scale(), 1e-10);
    assertEquals(-75.13461816447487, fit.logLikelihood(), 1e-12);
  }

  /** mpmath, 30 digits: where the profile of the same likelihood has fallen by χ²(0.95, 1)/2. */
  @Test
  void givesTheIntervalsOfTheLikelihood() {
    WeibullFit fit = WeibullFit.of(NIST);
    assertInterval(0.90564535875219, 2.8857378657413, fit.shapeInterval(0.95));
    assertInterval(437.55674539406, 1118.8776246986, fit.scaleInterval(0.95));
    assertInterval(59.854554249415, 271.94951755532, fit.quantileInterval(0.1, 0.95));
    assertEquals(164.02243866001, fit.quantile(0.1), 1e-9);
    assertEquals(0.13775204317403, fit.failedBy(200), 1e-13);
    assertEquals(0.1, fit.failedBy(fit.quantile(0.1)), 1e-15);
  }

  private static void assertInterval(double low, double high, Interval interval) {
    assertEquals(1, interval.low() / low, 1e-10);
    assertEquals(1, interval.high() / high, 1e-10);
  }

  /** Arm 6-MP of Gehan's leukaemia trial (R package MASS): R 4.2 {@code survreg}, then mpmath. */
  @Test
  void agreesOnTheLeukaemiaTrial() {
    WeibullFit fit = WeibullFit.of(Gehan.TREATED);
    assertEquals(1.353734523826221, fit.shape(), 1e-13);
    assertEquals(33.76515096763497, fit.scale(), 1e-12);
    assertEquals(-41.65867847688155, fit.logLikelihood(), 1e-12);
  }

  @Test
  void countsGroupsAsTheirMembers() {
    List<Lifetime> single = new ArrayList<>(NIST);
    single.removeIf(life -> !life.failed());
    single.add(new Lifetime(500, false, 10));
    assertEquals(WeibullFit.of(NIST).shape(), WeibullFit.of(single).shape(), 1e-13);
  }

  /** A time in another unit is the same shape: months for hours. */
  @Test
  void scalesWithTheUnitOfTime() {
    List<Lifetime> months =
        NIST.stream().map(l -> new Lifetime(l.time() / 730, l.failed(), l.count())).toList();
    assertEquals(WeibullFit.of(NIST).shape(), WeibullFit.of(months).shape(), 1e-12);
    assertEquals(WeibullFit.of(NIST).scale() / 730, WeibullFit.of(months).scale(), 1e-12);
  }

  /** 2,000 seeded samples of 30 with some two fifths suspended: nominal 95 %, ± 3 deviations. */
  @Test
  void coversTheTruthAsOftenAsStated() {
    WeibullDistribution truth = new WeibullDistribution(new Well19937c(8), 1.6, 900);
    double life = 900 * Math.pow(-Math.log(0.9), 1 / 1.6);
    int runs = 2000;
    int shapes = 0;
    int lives = 0;
    for (int run = 0; run < runs; run++) {
      List<Lifetime> units = new ArrayList<>();
      for (int unit = 0; unit < 30; unit++) {
        double end = truth.sample();
        units.add(end > 850 ? Lifetime.suspension(850) : Lifetime.failure(end));
      }
      WeibullFit fit = WeibullFit.of(units);
      shapes += fit.shapeInterval(0.95).contains(1.6) ? 1 : 0;
      lives += fit.quantileInterval(0.1, 0.95).contains(life) ? 1 : 0;
    }
    assertEquals(0.95, (double) shapes / runs, 0.015);
    assertEquals(0.95, (double) lives / runs, 0.015);
  }

  /** Five early failures of 100,000 young units: when most of them would fail is not known. */
  @Test
  void leavesAnEndOpenThatTheDataLeaveOpen() {
    List<Lifetime> young = new ArrayList<>();
    for (double time : new double[] {0.001, 0.01, 0.1, 0.5, 1}) {
      young.add(Lifetime.failure(time));
    }
    young.add(new Lifetime(1, false, 100_000));
    assertEquals(Double.POSITIVE_INFINITY, WeibullFit.of(young).scaleInterval(0.95).high());
  }

  @Test
  void refusesToDrawThroughThreePoints() {
    List<Lifetime> few = List.of(Lifetime.failure(3), Lifetime.failure(5), Lifetime.failure(8));
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> WeibullFit.of(few));
    assertEquals(
        "a Weibull line needs at least 5 failures, there are 3; count them with their interval"
            + " instead",
        refusal.getMessage());
  }

  @Test
  void refusesFailuresOfOneMoment() {
    List<Lifetime> same = Collections.nCopies(6, Lifetime.failure(12));
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> WeibullFit.of(same))
            .getMessage()
            .contains("no shape"));
    assertThrows(IllegalArgumentException.class, () -> Lifetime.failure(0));
    assertThrows(IllegalArgumentException.class, () -> new Lifetime(1, true, 0));
  }

  private static List<Lifetime> read(String resource) {
    List<Lifetime> lives = new ArrayList<>();
    for (double[] row : Reference.table(resource)) {
      lives.add(new Lifetime(row[0], row[1] == 1, 1));
    }
    return lives;
  }
}
