package corewright.bench.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.judge.BenchEvent.What;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Common practice, no source: a bench whose reference unit reads otherwise is locked, and what it
 * said since that unit was right last is suspect.
 */
class BenchStandingTest {
  private final List<BenchEvent> events = new ArrayList<>();

  @Test
  void aBadCheckLocksAndPutsEverythingSinceTheUnitsLastGoodOneInDoubt() {
    at(10, What.CHECKED_GOOD, "G1");
    at(11, What.CHECKED_GOOD, "B1");
    at(20, What.CHECKED_GOOD, "G1");
    assertEquals(List.of(), standing().locked());
    at(30, What.CHECKED_BAD, "B1", "it passed");
    at(31, What.LOCKED, "B1", "it passed");

    assertEquals(List.of("it passed"), standing().locked());
    assertEquals(Optional.of("it passed"), standing().suspect(15)); // G1 was right, B1 was not seen
    assertEquals(Optional.of("it passed"), standing().suspect(25));
    assertEquals(Optional.empty(), standing().suspect(9));
    assertEquals(Optional.empty(), standing().suspect(40));
  }

  @Test
  void aBenchThatNeverHadAGoodCheckNeverSaidAnything() {
    at(30, What.CHECKED_BAD, "G1", "low");
    assertEquals(Optional.of("low"), standing().suspect(1));
  }

  @Test
  void onlyTheUnitThatFailedTakesTheLockOffAndTheDoubtStays() {
    at(10, What.CHECKED_BAD, "G1", "low");
    at(11, What.CHECKED_GOOD, "B1");
    assertEquals(List.of("low"), standing().locked());
    at(12, What.CHECKED_GOOD, "G1");
    assertEquals(List.of(), standing().locked());
    assertEquals(Optional.of("low"), standing().suspect(5));
  }

  @Test
  void aLockByHandHoldsUntilAGoodCheck() {
    at(10, What.CHECKED_GOOD, "G1");
    at(20, What.LOCKED, "", "a lead was found loose");
    assertEquals(List.of("a lead was found loose"), standing().locked());
    assertEquals(Optional.of("a lead was found loose"), standing().suspect(15));
    assertEquals(Optional.empty(), standing().suspect(5));
    at(21, What.CHECKED_GOOD, "G1");
    assertEquals(List.of(), standing().locked());
  }

  @Test
  void anOwnersUnlockLeavesTheDoubtUnlessTheOwnerSaysThatResultsStand() {
    at(10, What.CHECKED_BAD, "G1", "low");
    at(20, What.UNLOCKED, "");
    assertEquals(List.of(), standing().locked());
    assertEquals(Optional.of("low"), standing().suspect(5));
    at(30, What.CHECKED_BAD, "G1", "dropped on the floor");
    at(40, What.CLEARED, "");
    assertEquals(Optional.empty(), standing().suspect(25));
    assertEquals(Optional.of("low"), standing().suspect(5)); // of the earlier lock
  }

  @Test
  void aChannelThatWasFoundOutPutsItsTimeInDoubtAndNobodyDeclaresThatRight() {
    at(10, What.CALIBRATED, "output");
    at(20, What.CHECKED_BAD, "G1", "low");
    at(21, What.FOUND_OUT, "output", "found 0.5 V off");
    at(22, What.CLEARED, "");
    assertEquals(List.of(), standing().locked());
    assertEquals(Optional.of("found 0.5 V off"), standing().suspect(15));
    assertEquals(Optional.empty(), standing().suspect(9));
  }

  private BenchStanding standing() {
    return BenchStanding.of(events);
  }

  private void at(long place, What what, String unit, String... words) {
    events.add(new BenchEvent(place, what, unit, "", "Ada", "", List.of(words)));
  }
}
