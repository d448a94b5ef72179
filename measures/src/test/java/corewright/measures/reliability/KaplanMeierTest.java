package corewright.measures.reliability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.reliability.KaplanMeier.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KaplanMeierTest {

  /** Survival: R 4.2 {@code survfit}; 95 % intervals: scipy 1.17 {@code ecdf}, method log-log. */
  @ParameterizedTest
  @CsvSource({
    "0, 6,  21, 3, 0.857142857143, 0.6197179552659838,  0.951551747646997",
    "1, 7,  17, 1, 0.806722689076, 0.5631465646222333,  0.9228090192028804",
    "2, 10, 15, 1, 0.752941176471, 0.5031995107999564,  0.8893618351692655",
    "3, 13, 12, 1, 0.690196078431, 0.43161022248618397, 0.8490659633494507",
    "4, 16, 11, 1, 0.627450980392, 0.36751085598750205, 0.8049121894718412",
    "5, 22, 7,  1, 0.537815126050, 0.26777893676713505, 0.7467907176353944",
    "6, 23, 6,  1, 0.448179271709, 0.18805200595923235, 0.6801426284952414",
  })
  void agreesOnTheLeukaemiaTrial(
      int index,
      double time,
      long atRisk,
      long failures,
      double survival,
      double low,
      double high) {
    KaplanMeier curve = KaplanMeier.of(Gehan.TREATED);
    assertEquals(7, curve.steps().size());
    Step step = curve.steps().get(index);
    assertEquals(time, step.time());
    assertEquals(atRisk, step.atRisk());
    assertEquals(failures, step.failures());
    assertEquals(survival, step.survival(), 6e-13);
    assertEquals(low, step.interval(0.95).low(), 1e-13);
    assertEquals(high, step.interval(0.95).high(), 1e-13);
    assertEquals(survival, curve.survivalAt(time), 6e-13);
  }

  /** R 4.2 {@code survfit}: medians 23 and 8 weeks. */
  @Test
  void findsTheMedian() {
    assertEquals(23, KaplanMeier.of(Gehan.TREATED).median().orElseThrow());
    assertEquals(8, KaplanMeier.of(Gehan.CONTROL).median().orElseThrow());
    assertTrue(KaplanMeier.of(List.of(Lifetime.suspension(5))).median().isEmpty());
  }

  /** Without suspensions it is the share that is left, and its error that of a proportion. */
  @Test
  void isTheShareLeftWhereAllFailed() {
    KaplanMeier curve = KaplanMeier.of(Gehan.CONTROL);
    Step step = curve.steps().get(2); // at 3 weeks 5 of 21 have failed
    assertEquals(16 / 21.0, step.survival(), 1e-15);
    assertEquals(Math.sqrt(16 / 21.0 * 5 / 21.0 / 21), step.standardError(), 1e-15);
    Step last = curve.steps().get(curve.steps().size() - 1);
    assertEquals(0, last.survival());
    assertEquals(0, last.standardError());
    assertEquals(1, last.interval(0.95).high());
    assertEquals(1, curve.survivalAt(0.5));
  }
}
