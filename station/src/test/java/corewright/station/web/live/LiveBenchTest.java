package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Profile;
import corewright.reports.ledger.RunBegun;
import corewright.station.web.Drafts;
import corewright.station.work.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** One bench, whoever drives and whoever watches. What is asserted is what became of the unit. */
@Timeout(120)
class LiveBenchTest {
  private static final List<String> STEPS =
      List.of("dead", "first-power", "rest", "full", "discharge");

  @TempDir private Path folder;

  private final Clock clock = Clock.system();
  private final EmulatedForTests emulated = new EmulatedForTests();
  private SmallShop shop;
  private LiveBench bench;
  private HandKept kept;

  @BeforeEach
  void open() {
    shop = SmallShop.in(folder, clock);
    bench = new LiveBench(emulated, "/did/", shop::workshop, clock);
    kept = new HandKept(new Drafts(folder.resolve("drafts")));
  }

  @AfterEach
  void close() {
    bench.close();
    shop.close();
  }

  /** Its open run would be taken for one that a dead program has left, and closed. */
  @Test
  void aBenchThatSomethingElseUsesTakesNobody() {
    LiveBench used =
        new LiveBench(
            emulated, "/did/", shop::workshop, clock, () -> "The sample shop is being filled.");
    Refused refused = assertThrows(Refused.class, () -> used.start(shop.start("I. Marsh")));
    assertEquals("The sample shop is being filled", refused.getMessage());
    assertTrue(used.running().isEmpty());
  }

  @Test
  void stopInEachStepEndsInTheSafeStateAndNamesWhoPressed() throws Exception {
    readByHand();
    for (int step = 0; step < STEPS.size(); step++) {
      LiveRun run = bench.start(shop.start("I. Marsh"));
      boolean live = step != 1; // the first power is stopped once its output has been seen
      while ((run.begun().size() <= step || !live) && !run.isOver()) {
        live = live || run.seen().filter(s -> s.output_V() > 12).isPresent();
        clock.pause(Duration.ofMillis(1));
      }
      bench.stop("T. Okafor");
      bench.stop("Somebody else"); // asked again it changes nothing
      end(run);
      RunRecord record = run.record().orElseThrow(() -> new AssertionError(run.failure()));
      assertUnitIsSafe(STEPS.get(step));
      if (step == STEPS.size() - 1) {
        assertEquals(RunEnd.Kind.COMPLETED, record.end().kind()); // everything was off already
      } else {
        assertEquals(RunEnd.Kind.STOPPED, record.end().kind(), record.end().saw());
        assertEquals(STEPS.get(step), record.end().step());
        assertTrue(handReadingsStand(), "the next attempt takes them");
        assertEquals("T. Okafor pressed STOP on the console.", record.end().saw());
      }
      assertEquals(
          step == 0 ? "NOT SWITCHED ON" : "NOT ENERGISED", bench.plate().word(), STEPS.get(step));
    }
  }

  private void assertUnitIsSafe(String step) {
    TrueState state = emulated.atTheEnd();
    assertFalse(state.sourceOn(), step);
    assertFalse(state.relayClosed(), step);
    assertFalse(state.loadOn(), step);
    assertTrue(state.discharging(), step);
    assertTrue(state.capacitor_V() < 5, step + " " + state.capacitor_V());
  }

  private boolean handReadingsStand() {
    Dossier dossier = shop.workshop().ledger().dossier(shop.tag());
    return !kept.of(bench, dossier, profile()).isEmpty();
  }

  /** A profile without a step by hand: whose they are is no matter here. */
  private void readByHand() {
    Dossier dossier = shop.workshop().ledger().dossier(shop.tag());
    HandKept.Entry entry = new HandKept.Entry("1", "0.1", "mA", "4", "I. Marsh", clock.wall());
    kept.keep(bench, dossier, profile(), Map.of("key-off", entry));
  }

  private Profile profile() {
    return shop.workshop().catalogue().profile("sd48-arrival");
  }

  @Test
  void aSecondDriverIsRefusedByTheFirstOnesNameAndThePlateIsMeasured() throws Exception {
    readByHand();
    LiveRun run = bench.start(shop.start("I. Marsh"));
    Refused refused = assertThrows(Refused.class, () -> bench.start(shop.start("T. Okafor")));
    assertTrue(
        refused.getMessage().startsWith("I. Marsh drives emulated-sd48"), refused.toString());
    while (!bench.plate().form().equals("on")) {
      assertFalse(run.isOver(), run.failure());
      clock.pause(Duration.ofMillis(1));
    }
    assertEquals("ENERGISED", bench.plate().word());
    assertTrue(Double.parseDouble(bench.plate().volts()) >= 5);
    end(run);
    assertEquals("off", bench.plate().form());
    assertFalse(handReadingsStand(), "after a verdict the unit may be opened");
    RunRecord record = run.record().orElseThrow();
    assertEquals(Source.EMULATED, record.source());
    assertEquals("I. Marsh", record.operator());
    assertTrue(run.outcome().isPresent(), run.failure());
    assertEquals(record.id(), shop.workshop().ledger().dossier(shop.tag()).runs().get(0).id());
  }

  /** A fixture with another resistor: refused before anything is on, and what was said is kept. */
  @Test
  void whatGoesOverTheWiresIsKeptOnRequest() throws Exception {
    Setup setup = Setup.of(UnitParameters.healthy("sd48"), 1).over(LineKind.LOOPBACK);
    Path shipped = Path.of(System.getProperty("corewright.home"), "fixtures", "benches");
    String text =
        Files.readString(shipped.resolve("emulated-sd48.json"))
            .replace("\"discharge_ohm\": 470", "\"discharge_ohm\": 4700");
    try (EmulatedBench bench7 = EmulatedBench.open(setup)) {
      BenchDescription described =
          Descriptions.bench(Files.writeString(folder.resolve("bench.json"), text))
              .withPorts(bench7.ports());
      LiveBench real =
          new LiveBench(new RealBench(described, clock), "/did/", shop::workshop, clock);
      LiveRun run =
          real.start(
              new Start(shop.tag(), "sd48-arrival", "I. Marsh", Optional.empty(), Map.of(), true));
      end(run);
      assertEquals("", run.failure());
      RunRecord record = run.record().orElseThrow();
      assertEquals(RunEnd.Kind.BENCH_FAULT, record.end().kind(), record.end().saw());
      Path kept = run.wire().orElseThrow();
      assertEquals(record.id() + ".wire", kept.getFileName().toString());
      assertTrue(Files.readString(kept).startsWith("corewright wire log 1"));
    }
  }

  @Test
  void whatADeadProgramLeftIsTakenToTheSafeStateFirstAndClosed() {
    shop.workshop()
        .ledger()
        .runBegun(
            new RunBegun(
                "emulated-sd48-x-arrival-1-0000",
                shop.tag(),
                "arrival",
                1,
                Source.EMULATED,
                clock.wall(),
                "I. Marsh",
                "emulated-sd48",
                "EF-SD48",
                "sd48-arrival",
                "captures/x"));
    bench.recover();
    RunRecord died = shop.workshop().ledger().dossier(shop.tag()).runs().get(0);
    assertEquals(RunEnd.Kind.ABANDONED, died.end().kind());
    assertTrue(bench.left().get(0).contains("The safe state was commanded first."));
    assertFalse(emulated.atTheEnd().sourceOn());
    assertTrue(emulated.atTheEnd().discharging());
    assertEquals("unknown", bench.plate().form()); // commanded, and not proved
    assertEquals("NOT KNOWN", bench.plate().word());
  }

  private static void end(LiveRun run) throws InterruptedException {
    assertTrue(run.latch().await(60, TimeUnit.SECONDS), "the run does not end");
  }
}
