package corewright.measures.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.trend.Steps.Step;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class StepsTest {

  /** Cobb 1978: one step, after 1898, of 849.97 − 1097.75. */
  @Test
  void findsTheDamOfTheNile() {
    List<Step> steps = Steps.find(Nile.FLOW, 0, 0);
    assertEquals(1, steps.size());
    assertEquals(1899 - 1871, steps.get(0).index());
    assertEquals(849.97 - 1097.75, steps.get(0).size(), 2 * steps.get(0).u());
  }

  /**
   * 300 seeded records each: noise alone, a ramp, a warming-up: at most one in a hundred has steps.
   */
  @Test
  void findsNoneWhereThereIsNone() {
    assertTrue(falseAlarms(i -> 47) <= 3);
    assertTrue(falseAlarms(i -> 47 - 0.0005 * i) <= 3);
    assertTrue(falseAlarms(i -> 47 - 0.3 * Math.exp(-i / 200.0)) <= 3);
  }

  private static int falseAlarms(IntToDoubleFunction level) {
    RandomGenerator random = new Well19937c(21);
    int alarms = 0;
    for (int run = 0; run < 300; run++) {
      alarms += Steps.find(record(600, level, 0.01, random), 0, 0).isEmpty() ? 0 : 1;
    }
    return alarms;
  }

  /**
   * An intermittent joint: 40 mV lost at 200, back at 320, on a drift; noise 10 mV. 300 records.
   */
  @Test
  void findsAnIntermittentJointOnADrift() {
    RandomGenerator random = new Well19937c(22);
    int found = 0;
    int covered = 0;
    for (int run = 0; run < 300; run++) {
      double[] x = record(600, i -> 47 - 1e-5 * i - (i >= 200 && i < 320 ? 0.04 : 0), 0.01, random);
      List<Step> steps = Steps.find(x, 0, 0);
      if (steps.size() == 2
          && Math.abs(steps.get(0).index() - 200) <= 3
          && Math.abs(steps.get(1).index() - 320) <= 3) {
        found++;
        covered += Math.abs(steps.get(0).size() + 0.04) <= 2 * steps.get(0).u() ? 1 : 0;
      }
    }
    assertTrue(found >= 297, found + " of 300");
    assertTrue(
        covered >= 0.9 * found, covered + " of " + found); // choosing the place costs a little
  }

  /** Twice the record is twice the steps; a level added changes nothing. */
  @Test
  void scalesAndShiftsWithTheRecord() {
    double[] x = record(300, i -> i < 100 ? 0 : 1, 0.1, new Well19937c(23));
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = 1000 + 2 * x[i];
    }
    List<Step> one = Steps.find(x, 0, 0);
    List<Step> two = Steps.find(y, 0, 0);
    assertEquals(1, one.size());
    assertEquals(1, two.size());
    assertEquals(one.get(0).index(), two.get(0).index());
    assertEquals(2 * one.get(0).size(), two.get(0).size(), 1e-9);
  }

  /**
   * A quiet channel that moves by one code: both levels may be wrong by half a code, so their
   * difference has u = code/√6 (JCGM 100, F.2.2.1 twice), and a code is no step.
   */
  @Test
  void doesNotTakeACodeForAStep() {
    double code = 0.005;
    double[] x = new double[200];
    for (int i = 100; i < 200; i++) {
      x[i] = code;
    }
    double ofOne = code / Math.sqrt(12);
    assertEquals(List.of(), Steps.find(x, ofOne, ofOne));
    for (int i = 100; i < 200; i++) {
      x[i] = 3 * code;
    }
    List<Step> three = Steps.find(x, ofOne, ofOne);
    assertEquals(1, three.size());
    assertTrue(three.get(0).u() >= code / Math.sqrt(6), three.toString());
    assertThrows(IllegalArgumentException.class, () -> Steps.find(x, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> Steps.find(new double[4], 1, 0));
  }

  private static double[] record(
      int n, IntToDoubleFunction level, double noise, RandomGenerator random) {
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = level.applyAsDouble(i) + noise * random.nextGaussian();
    }
    return x;
  }
}
