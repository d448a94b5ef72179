package corewright.bench.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** By hand: the trade's shares count as twenty teardowns. */
class PriorsTest {

  @Test
  void withoutTeardownsTheyAreTheTradesAndAddUpToOne() {
    Priors trade = Priors.ofTrade();
    assertEquals(1, trade.shares().values().stream().mapToDouble(s -> s).sum(), 1e-12);
    // cracked joints 25 %, dried-out capacitors 18 % of failing cores (trade's judgement)
    assertEquals(0.25 / 0.18, trade.of(Group.JOINT) / trade.of(Group.OUTPUT_ESR), 1e-12);
  }

  @Test
  void aHundredTeardownsOutweighTheTrade() {
    Priors trade = Priors.ofTrade();
    Priors own = Priors.ofTeardowns(Map.of(Group.LOOP, 100));
    assertEquals((100 + 20 * trade.of(Group.LOOP)) / 120, own.of(Group.LOOP), 1e-12);
    assertEquals(20 * trade.of(Group.JOINT) / 120, own.of(Group.JOINT), 1e-12);
    assertTrue(own.shares().values().stream().allMatch(s -> s > 0), "nothing is ruled out");
  }
}
