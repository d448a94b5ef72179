package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import org.junit.jupiter.api.Test;

/**
 * Nothing is powered that may be charged or short, and nothing is let go before it is proved empty.
 */
class ChargeTest extends FakeRuns {

  @Test
  void aDeadShortIsNeverEnergisedPastTheLimitedStep() {
    bench.unit.shorted = true;
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertEquals("first", result.end().step());
    assertTrue(result.end().saw().startsWith("The unit took the whole 0.50 A"), result.end().saw());
    assertTrue(bench.unit.limit_A <= 0.5, "the limit was never raised");
    assertFalse(bench.told.contains("load input true"));
    assertTrue(result.capture().isEmpty());
    isSafe();
  }

  @Test
  void aUnitThatIsChargedAndCannotBeDischargedIsNotPowered() {
    bench.unit.capacitor_V = 37;
    bench.unit.dischargeBroken = true;
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertTrue(result.end().saw().startsWith("The output still holds 37.00 V after 4.2 s"));
    assertFalse(bench.told.contains("source output true"));
    assertEquals(1, result.troubles().size(), "and it still is: " + result.troubles());
  }

  @Test
  void chargeThatComesBackWithTheResistorLiftedIsSeen() {
    bench.unit.hidden_A = 0.002; // 1 V/s into 2000 µF
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertTrue(result.end().saw().contains("charge is left inside"), result.end().saw());
  }

  @Test
  void aChargedUnitIsDischargedFirstAndThenRun() {
    bench.unit.capacitor_V = 48;
    assertEquals(RunEnd.Kind.COMPLETED, run(Plans.plan(folder)).end().kind());
    isSafe();
  }

  @Test
  void aDischargeThatDoesNotHappenIsAFaultOfTheBench() {
    RunListener breaks =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            bench.unit.dischargeBroken = step.kind() == Step.Kind.DISCHARGE;
          }
        };
    RunResult result = run(Plans.plan(folder), breaks, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().remedy().startsWith("Treat the unit as charged"));
    assertFalse(result.troubles().isEmpty());
  }

  @Test
  void aFixtureThatHoldsItsResistorOnIsMadeToLetGoBeforeTheUnitIsLookedAt() {
    bench.unit.heldOn = true;
    bench.unit.hidden_A = 0.004; // a capacitor behind a diode: seen only with the resistor lifted
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, run(Plans.plan(folder)).end().kind());
    int closed = bench.told.indexOf("digitizer relay true");
    assertEquals("digitizer relay false", bench.told.get(closed + 1));
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void aMeterThatFindsVoltageWhereTheDigitizerFindsNoneIsBelieved() {
    bench.unit.capacitor_V = 30;
    bench.unit.dischargeBroken = true;
    bench.frames =
        f -> {
          java.util.Arrays.fill(f.codes()[1], (short) 0); // its lead is off
          return f;
        };
    RunResult result = run(Plans.plan(folder));
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, result.end().kind());
    assertTrue(result.end().saw().startsWith("The meter finds 30.0"), result.end().saw());
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void withoutAMeterAnOutputThatWasNeverSeenLiveProvesNothing() {
    bench.hasMeter = false;
    bench.unit.regulates_V = 3;
    Profile rest = Plans.profile(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.AWAY);
    RunResult result = run(Plans.plan(folder, rest));
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(result.end().saw().contains("is not proved"), result.end().saw());
  }

  @Test
  void aFallThatIsMuchSlowerThanTheResistorMakesItIsNoDischarge() {
    bench.unit.regulates_V = 20; // from here within_s alone would allow three times as long
    RunListener weak =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            // 2.7 times the resistance: what the resistor takes, less what comes back
            bench.unit.resistance_factor = step.kind() == Step.Kind.DISCHARGE ? 2.7 : 1;
          }
        };
    Profile rest = Plans.profile(Plans.DEAD, Plans.FIRST, Plans.REST, Plans.AWAY);
    RunResult result = run(Plans.plan(folder, rest), weak, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    assertTrue(
        result.end().saw().startsWith("The output fell with a time constant of 2.53"),
        result.end().saw());
  }

  /** 5 mA from somewhere hold 470 Ω at 2.35 V: under the safe level, and fed all the same. */
  @Test
  void anOutputThatSomethingElseFeedsIsNotDischarged() {
    RunListener feeds =
        new RunListener() {
          @Override
          public void step(Step step, int index, int count) {
            bench.unit.hidden_A = step.kind() == Step.Kind.DISCHARGE ? 0.005 : 0;
          }
        };
    RunResult result = run(Plans.plan(folder), feeds, new Stop());
    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind(), result.end().saw());
    assertTrue(result.end().saw().contains("The output falls towards 2.349"), result.end().saw());
    assertTrue(result.end().remedy().startsWith("Treat the unit as charged"));
  }

  @Test
  void theFallTellsTheCapacitance() {
    RunResult result = run(Plans.plan(folder));
    Measurement found =
        result.beside().readings().get(Quantity.CAPACITANCE_FROM_DECAY).measurement().orElseThrow();
    assertEquals(FakeUnit.CAPACITANCE_F, found.value(), 0.01 * FakeUnit.CAPACITANCE_F, "τ / 470 Ω");
    assertEquals(0.07, found.u() / found.value(), 0.005);
  }
}
