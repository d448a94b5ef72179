package corewright.measures.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /**
   * 95 %. First four rows: cases of Newcombe 1998 (from memory), digits from R 4.2 {@code
   * prop.test} without correction and {@code binom.test}; the last: scipy 1.17, 8 digits.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.255288519878,  0.366209576983, 0.252736745585,   0.367621922601, 6e-13",
    "15, 148, 0.0623863995307, 0.160487241723, 0.0578440100834,  0.161650490349, 6e-13",
    "0,  20,  0,               0.161125158053, 0,                0.168433470983, 6e-13",
    "1,  29,  0.00611321429276, 0.171755218793, 0.00087264688358, 0.177644295489, 6e-13",
    "5,  100, 0.02154368,      0.11175047,     0.01643188,       0.11283491,     5e-9",
  })
  void agreesWithTwoPrograms(
      long hits,
      long trials,
      double wilsonLow,
      double wilsonHigh,
      double exactLow,
      double exactHigh,
      double tolerance) {
    Proportion p = new Proportion(hits, trials);
    assertEquals(wilsonLow, p.wilson(0.95).low(), tolerance);
    assertEquals(wilsonHigh, p.wilson(0.95).high(), tolerance);
    assertEquals(exactLow, p.clopperPearson(0.95).low(), tolerance);
    assertEquals(exactHigh, p.clopperPearson(0.95).high(), tolerance);
  }

  /** Failures and successes change places: the interval is mirrored. */
  @ParameterizedTest
  @CsvSource({"0, 1", "0, 20", "3, 7", "15, 148", "20, 20"})
  void mirrorsWhenSuccessAndFailureChangePlaces(long hits, long trials) {
    Proportion p = new Proportion(hits, trials);
    Proportion q = new Proportion(trials - hits, trials);
    assertEquals(1 - p.wilson(0.9).low(), q.wilson(0.9).high(), 1e-14);
    assertEquals(1 - p.clopperPearson(0.9).low(), q.clopperPearson(0.9).high(), 1e-12);
  }

  /** Definition of the exact interval: at its ends, the tails of the binomial are (1 − level)/2. */
  @ParameterizedTest
  @CsvSource({"1, 29, 0.95", "81, 263, 0.95", "2, 1000, 0.99", "990, 1000, 0.8"})
  void exactIntervalLeavesHalfTheRestInEachTail(int hits, int trials, double level) {
    Interval interval = new Proportion(hits, trials).clopperPearson(level);
    double tail = (1 - level) / 2;
    BinomialDistribution low = new BinomialDistribution(null, trials, interval.low());
    assertEquals(tail, 1 - low.cumulativeProbability(hits - 1), 1e-10);
    BinomialDistribution high = new BinomialDistribution(null, trials, interval.high());
    assertEquals(tail, high.cumulativeProbability(hits), 1e-10);
  }

  /** Success run: n ≥ ln(1 − level)/ln(reliability), common practice; printed in many handbooks. */
  @ParameterizedTest
  @CsvSource({"0.95, 0.95, 59", "0.90, 0.95, 29", "0.99, 0.95, 299"})
  void countsTrialsWithoutFailure(double reliability, double level, long trials) {
    assertEquals(trials, Proportion.withoutFailure(reliability, level));
  }

  @Test
  void neverLeavesZeroToOne() {
    Interval none = new Proportion(0, 20).wilson(0.95);
    assertEquals("0.0", Double.toString(none.low())); // and not −0.0
    assertEquals(1, new Proportion(20, 20).wilson(0.95).high());
  }

  @Test
  void refusesWhatIsNoProportion() {
    assertThrows(IllegalArgumentException.class, () -> new Proportion(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Proportion(3, 2));
    assertThrows(IllegalArgumentException.class, () -> new Proportion(-1, 2));
    assertThrows(IllegalArgumentException.class, () -> new Proportion(1, 2).wilson(95));
  }
}
