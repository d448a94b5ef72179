package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.port.InstrumentFault;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunEnd.Trip;
import corewright.profiles.Profile;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every trip through the engine, with the unit's charge and the relay looked at afterwards. */
class TripsTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();
  private long taken;

  private RunResult run() {
    return run(Plans.whole());
  }

  private RunResult run(Profile profile) {
    RunResult result =
        new RunEngine(bench.clock)
            .run(Plans.plan(folder, profile), bench.instruments(), RunListener.NONE, new Stop());
    assertFalse(bench.unit.sourceOn, "source");
    assertFalse(bench.unit.loadOn, "load");
    assertFalse(bench.unit.relayClosed, "relay");
    assertTrue(bench.unit.discharging, "discharge");
    assertTrue(bench.unit.capacitor_V < 5, bench.unit.capacitor_V + " V");
    return result;
  }

  private RunEnd trippedIn(String step, Trip trip) {
    RunEnd end = run().end();
    assertEquals(RunEnd.Kind.TRIPPED, end.kind(), end.saw());
    assertEquals(trip, end.trip());
    assertEquals(step, end.step());
    assertFalse(end.remedy().isEmpty());
    return end;
  }

  private RunEnd faulted(String saw) {
    return faulted(Plans.whole(), saw);
  }

  private RunEnd faulted(Profile profile, String saw) {
    RunEnd end = run(profile).end();
    assertEquals(RunEnd.Kind.BENCH_FAULT, end.kind(), end.saw());
    assertTrue(end.saw().contains(saw), end.saw());
    assertFalse(end.remedy().isEmpty());
    return end;
  }

  private boolean loaded() {
    return bench.unit.loadOn;
  }

  /** Changes the frames that come once the load is on, beginning with the {@code n}-th. */
  private void whenLoaded(int n, UnaryOperator<Frame> change) {
    bench.frames = frame -> loaded() && ++taken >= n ? change.apply(frame) : frame;
  }

  private static Frame status(Frame f, Status status) {
    return new Frame(f.first(), status, f.codes(), f.brokenBefore());
  }

  @Test
  void oneSampleOverTheUpperLimitOfTheOutputTrips() {
    whenLoaded(
        3,
        f -> {
          if (taken == 3) {
            f.codes()[1][2] = (short) (56.1 / 0.004);
          }
          return f;
        });
    RunEnd end = trippedIn("full", Trip.OUTPUT_OVER);
    assertEquals("The output rose to 56.10 ± 0.06 V; more than 56 V ends the run.", end.saw());
  }

  @Test
  void anOutputBeyondTheDigitizersRangeTripsAsTooHigh() {
    whenLoaded(
        1,
        f -> {
          f.codes()[1][0] = Short.MAX_VALUE;
          return f;
        });
    assertTrue(trippedIn("full", Trip.OUTPUT_OVER).saw().contains("beyond the digitizer's range"));
  }

  @Test
  void aCollapseUnderLoadTripsAfterHalfASecondAndNotBefore() {
    whenLoaded(
        1,
        f -> {
          bench.unit.regulates_V = 20;
          return f;
        });
    RunEnd end = trippedIn("full", Trip.OUTPUT_UNDER);
    assertEquals(
        "The output was 19.80 ± 0.03 V at a load set to 2 A, and under 30 V for more than 0.5 s.",
        end.saw());
    // dead check 1 s, first power 3.1 s, rest 0.4 s; the fall through 30 V takes 10 to 15 ms
    assertEquals(1.0 + 3.1 + 0.4 + 0.5, end.at_s(), 0.05);
  }

  @Test
  void aShortDipUnderTheLimitDoesNotTrip() {
    whenLoaded(
        1,
        f -> {
          bench.unit.regulates_V = taken > 20 && taken < 115 ? 20 : 48; // 95 frames of 5 ms
          return f;
        });
    assertEquals(RunEnd.Kind.COMPLETED, run().end().kind());
  }

  @Test
  void anOutputThatIsLowWithoutLoadDoesNotTrip() {
    bench.unit.regulates_V = 20;
    assertEquals("full", run().end().step(), "only once it was loaded");
  }

  @Test
  void aSupplyCurrentOverItsLimitForLongerThanAllowedTrips() {
    whenLoaded(
        1,
        f -> {
          java.util.Arrays.fill(f.codes()[3], (short) (19 / 0.002));
          return f;
        });
    RunEnd end = trippedIn("full", Trip.SUPPLY_CURRENT_OVER);
    assertEquals(
        "The unit drew 19.00 ± 0.08 A, and more than 18 A for more than 0.01 s.", end.saw());
  }

  @Test
  void anInrushShorterThanAllowedDoesNotTrip() {
    whenLoaded(
        1,
        f -> {
          if (taken <= 2) { // 10 ms
            java.util.Arrays.fill(f.codes()[3], (short) (19 / 0.002));
          }
          return f;
        });
    assertEquals(RunEnd.Kind.COMPLETED, run().end().kind());
  }

  @Test
  void aSupplyThatRunsAwayIsAFaultOfTheBench() {
    whenLoaded(
        1,
        f -> {
          java.util.Arrays.fill(f.codes()[0], (short) (17 / 0.001));
          return f;
        });
    faulted("Supply feed input rose to 17.000 ± 0.019 V; the unit may be given 16 V.");
  }

  @Test
  void anOpenInterlockEndsTheRun() {
    whenLoaded(
        5,
        f -> {
          bench.unit.chainWhole = false;
          return f;
        });
    bench.before = command -> bench.unit.chainWhole |= command.equals("digitizer stop");
    faulted("The interlock chain opened.");
  }

  @Test
  void aRelayThatOpensByItselfEndsTheRun() {
    whenLoaded(5, f -> status(f, new Status(true, false, false, false, false, false)));
    faulted("The fixture's relay opened by itself.");
  }

  @Test
  void aWatchdogThatHasTrippedEndsTheRun() {
    whenLoaded(5, f -> status(f, new Status(true, false, true, false, false, true)));
    faulted("heard nothing from the station");
  }

  @Test
  void aHoleNoLongerThanAnyLimitAllowsIsKeptAsAGap() {
    whenLoaded(3, f -> new Frame(f.first() + 10, f.status(), f.codes(), 0));
    RunResult result = run();
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals(10, result.capture().orElseThrow().gaps().get(0).count());
    assertEquals(1, result.capture().orElseThrow().gaps().size());
  }

  @Test
  void aLongerHoleEndsTheRun() {
    whenLoaded(3, f -> new Frame(f.first() + 11, f.status(), f.codes(), 0));
    faulted("The digitizer's line was blind for 11.0 ms, and the limits allow 10.0 ms.");
  }

  @Test
  void manyBrokenFramesEndTheRun() {
    whenLoaded(1, f -> new Frame(f.first(), f.status(), f.codes(), 1));
    faulted("11 frames were broken, lost or repeated.");
  }

  @Test
  void aCountThatRunsBackwardsEndsTheRun() {
    whenLoaded(3, f -> new Frame(f.first() - 1, f.status(), f.codes(), 0));
    faulted("The digitizer counts its samples backwards");
  }

  @Test
  void aCaseThatIsTooHotTrips() {
    whenLoaded(
        20,
        f -> {
          bench.unit.case_C = 90.6;
          return f;
        });
    RunEnd end = trippedIn("full", Trip.CASE_TOO_HOT);
    assertEquals("The case was at 90.6 ± 1.5 °C; more than 90 °C ends the run.", end.saw());
  }

  @Test
  void aThermometerThatFallsSilentEndsTheRun() {
    bench.before =
        command -> {
          if (loaded() && command.equals("thermometer temperature?")) {
            throw new InstrumentFault("thermometer", "asking", "no answer", "Check its cable.");
          }
        };
    faulted("thermometer: asking: no answer.");
  }

  @Test
  void aThermometerThatHoldsTheLineHoldsUpNoFrame() throws InterruptedException {
    bench.waits = false;
    bench.hasMeter = false;
    CountDownLatch never = new CountDownLatch(1);
    bench.before =
        command -> {
          if (loaded() && command.equals("thermometer temperature?")) {
            await(never);
          }
        };
    try {
      faulted(
          Plans.profile(Plans.DEAD, Plans.FIRST, Plans.hold("full", 12.5, 2, 4), Plans.AWAY),
          "The thermometer has said nothing for 2 s.");
    } finally {
      never.countDown();
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void aBenchWithoutAThermometerRunsAndSaysSo() {
    bench.hasThermometer = false;
    RunResult result = run();
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    assertEquals("the bench has no thermometer.", result.beside().caseNote());
  }

  @Test
  void aShortThatTheMeterFindsIsNeverPowered() {
    bench.unit.deadOutput_ohm = 3;
    RunEnd end = run().end();
    assertEquals(RunEnd.Kind.REFUSED_TO_POWER, end.kind());
    assertEquals("dead", end.step());
    assertEquals(
        "Between the output terminals the meter finds 3.0 ± 0.5 Ω; less than 500 Ω is a short.",
        end.saw());
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void aShortedInputIsNeverPowered() {
    bench.unit.deadInput_ohm = 20;
    String saw = run().end().saw();
    assertTrue(saw.startsWith("Between the input terminals the meter finds 20.0"), saw);
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void aJunctionThatDropsNothingIsNeverPowered() {
    bench.unit.diode_V = 0.05;
    String saw = run().end().saw();
    assertTrue(saw.contains("diode test finds 0.050 ± 0.006 V"), saw);
    assertFalse(bench.told.contains("source output true"));
  }

  @Test
  void aDischargeResistorThatCouldNotBeLiftedIsNotTakenForAShort() {
    bench.unit.deadOutput_ohm = 440;
    bench.before =
        command -> {
          if (command.equals("meter resistance?")) {
            bench.unit.discharging = true; // as a fixture does whose watchdog has tripped
          }
        };
    faulted("The discharge resistor is connected again");
  }

  @Test
  void aReadingThatRisesAsTheMeterChargesTheUnitIsNoShort() {
    bench.unit.deadOutput_ohm = 100;
    bench.before =
        command -> {
          if (command.equals("meter resistance?")) {
            bench.unit.deadOutput_ohm += 50;
          }
        };
    assertEquals(RunEnd.Kind.COMPLETED, run().end().kind());
  }

  @Test
  void aDigitizerThatDisagreesWithTheMeterEndsTheRun() {
    bench.meterReads = v -> v > 40 ? 1.05 * v : v;
    RunEnd end = faulted("The meter read 50.4");
    assertEquals("rest", end.step());
  }
}
