package corewright.bench.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.Finding.Outcome;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import corewright.profiles.Profile.Purpose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleTest {

  /** By hand: ILAC-G8:09/2019, guard band 0 and U; u = 0.1, so U = 0.2. */
  @ParameterizedTest
  @CsvSource({
    // side, pass, fail, value, simple, guarded
    "AT_LEAST, 46.5, 46.5, 46.71, PASS, PASS",
    "AT_LEAST, 46.5, 46.5, 46.69, PASS, MARGINAL",
    "AT_LEAST, 46.5, 46.5, 46.50, PASS, MARGINAL",
    "AT_LEAST, 46.5, 46.5, 46.49, FAIL, MARGINAL",
    "AT_LEAST, 46.5, 46.5, 46.29, FAIL, FAIL",
    "AT_LEAST, 46.5, 45.0, 46.49, MARGINAL, MARGINAL",
    "AT_LEAST, 46.5, 45.0, 45.00, MARGINAL, MARGINAL",
    "AT_LEAST, 46.5, 45.0, 44.99, FAIL, MARGINAL",
    "AT_LEAST, 46.5, 45.0, 44.79, FAIL, FAIL",
    "AT_MOST, 3.2, 3.2, 2.99, PASS, PASS",
    "AT_MOST, 3.2, 3.2, 3.01, PASS, MARGINAL",
    "AT_MOST, 3.2, 3.2, 3.21, FAIL, MARGINAL",
    "AT_MOST, 3.2, 3.2, 3.41, FAIL, FAIL",
    "AT_MOST, 3.2, 4.0, 3.90, MARGINAL, MARGINAL",
  })
  void aReadingNearALimit(
      Limit.Side side, double pass, double fail, double value, Outcome simple, Outcome guarded) {
    Limit limit = new Limit("l", Quantity.OUTPUT, side, pass, fail, 0, 9, false, "test");
    Measurement m = new Measurement(value, 0.1, Unit.VOLT);
    assertEquals(simple, Rule.SIMPLE.outcome(limit, m));
    assertEquals(guarded, Rule.GUARDED.outcome(limit, m));
  }

  @Test
  void arrivalAcceptsSimplyAndWhatLeavesOrComesBackIsGuarded() {
    assertEquals(Rule.SIMPLE, Rule.of(Purpose.ARRIVAL));
    assertEquals(Rule.GUARDED, Rule.of(Purpose.SHIP));
    assertEquals(Rule.GUARDED, Rule.of(Purpose.CLAIM));
  }

  /** ILAC-G8:09/2019: with w = U at most 2.275 % of what sits on the acceptance limit is bad. */
  @Test
  void whatPassesWithTheGuardBandIsRarelyBad() {
    Limit limit =
        new Limit("l", Quantity.OUTPUT, Limit.Side.AT_LEAST, 46.5, 46.5, 0, 9, false, "test");
    Measurement just = new Measurement(46.5 + 2 * 0.1 + 1e-9, 0.1, Unit.VOLT);
    assertEquals(Outcome.PASS, Rule.GUARDED.outcome(limit, just));
    assertEquals(0.02275, 1 - Rule.conformity(limit, just), 5e-6);
    assertEquals(0.2, Rule.margin(limit, just), 1e-8);
  }
}
