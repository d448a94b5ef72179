package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.RunListener;
import corewright.bench.run.Stop;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.Benches.Check;
import corewright.station.demo.SampleCore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Common practice, no source: known good passes and known bad fails when the shift begins; a bench
 * whose reference unit reads otherwise is locked, its results since then are suspect.
 */
class ShiftCheckTest {
  private static final String PROFILE = "sd48-arrival";
  private static final UnitParameters GOOD = new UnitDraw(5).healthy("sd48");

  @TempDir private Path folder;
  private int seed = 100;

  /** The output's divider of an emulated bench drifts by 1.5 %: every unit still passes there. */
  @Test
  void aDriftedDividerLocksTheBenchAndWhatItSaidBeforeIsSuspect() throws IOException {
    try (Workshop shop =
        Workshop.open(brief(), folder.resolve("shop"), ShopFile.in(folder), "b", Clock.system())) {
      shop.limits().sign("profile " + PROFILE, "", "Ada");
      String good = SampleCore.receive(shop, "sd48");
      String core = SampleCore.receive(shop, "sd48");
      BenchDescription bench = bench(List.of(ReferenceUnit.good(good)));
      Harness sound = Harness.sound(48);
      Harness drifted = BenchFault.LOW_DIVIDER.in(sound, 0.1);

      assertTrue(state(shop, bench).units().get(0).due());
      assertEquals(Optional.of(Verdict.PASS), verdict(run(shop, bench, good, GOOD, sound)));
      assertFalse(state(shop, bench).units().get(0).due());
      RunRecord first = run(shop, bench, core, GOOD, sound);
      assertEquals(Optional.of(Verdict.PASS), verdict(first));
      assertEquals(Optional.empty(), suspect(shop, first));
      assertTrue(shop.publishing().write(Paperwork.CERTIFICATE, core, "Ada").toFile().exists());

      assertEquals(Optional.of(Verdict.PASS), verdict(run(shop, bench, good, GOOD, drifted)));
      ShiftCheck.State locked = state(shop, bench);
      assertTrue(locked.locked().get(0).contains("the bench is in doubt"), locked.toString());
      assertEquals(List.of(first.id()), locked.suspects().stream().map(s -> s.run()).toList());
      assertEquals(Optional.of(locked.locked().get(0)), suspect(shop, first));
      String refused =
          assertThrows(
                  Refused.class, () -> shop.publishing().write(Paperwork.CERTIFICATE, core, "Ada"))
              .getMessage();
      assertTrue(refused.contains("is suspect"), refused);

      ShiftCheck.State real = real(shop, bench); // none of it was seen on a bench that is real
      assertEquals(List.of(), real.locked());
      assertEquals(List.of(), real.suspects());
      assertTrue(real.units().get(0).due());

      RunRecord stopped = run(shop, bench, core, GOOD, sound);
      assertEquals(RunEnd.Kind.BENCH_FAULT, stopped.end().kind());
      assertEquals(0, stopped.end().at_s());
      assertTrue(stopped.end().remedy().startsWith("The bench is locked"), stopped.toString());

      run(shop, bench, good, GOOD, sound);
      assertEquals(List.of(), state(shop, bench).locked());
      assertTrue(suspect(shop, first).isPresent(), "a good check later proves nothing of before");
      RunRecord again = run(shop, bench, core, GOOD, sound);
      assertEquals(Optional.empty(), suspect(shop, again));
      shop.publishing().write(Paperwork.CERTIFICATE, core, "Ada");

      List<String> low = List.of("It reads low.");
      Check bad = new Check(good, "known good", "a real run", low);
      shop.ledger().benches().checked(bench.id(), bad, "Ada");
      assertEquals(low, real(shop, bench).locked());
      assertEquals(List.of(), real(shop, bench).suspects());
      assertEquals(List.of(), state(shop, bench).locked());
    }
  }

  /** A bench on which a unit with a weak power stage passes finds nothing any more. */
  @Test
  void aKnownBadUnitThatPassesLocksTheBench() throws IOException {
    UnitParameters bad = UnitFault.WEAK_POWER_STAGE.in(GOOD, 0.6);
    try (Workshop shop =
        Workshop.open(brief(), folder.resolve("shop"), ShopFile.in(folder), "b", Clock.system())) {
      shop.limits().sign("profile " + PROFILE, "", "Ada");
      String tag = SampleCore.receive(shop, "sd48");
      BenchDescription bench =
          bench(List.of(new ReferenceUnit(tag, ReferenceUnit.Kind.BAD, PROFILE, "")));
      assertEquals(
          Optional.of(Verdict.FAIL), verdict(run(shop, bench, tag, bad, Harness.sound(48))));
      assertEquals(List.of(), state(shop, bench).locked());
      run(shop, bench, tag, GOOD, Harness.sound(48)); // what a bench that sees no fault would see
      assertTrue(
          state(shop, bench).locked().get(0).contains("known bad and must come to FAIL"),
          state(shop, bench).toString());
    }
  }

  /** The shipped family, its arrival profile cut down to rest and full load. */
  private Catalogue brief() throws IOException {
    Path home = Path.of(System.getProperty("corewright.home"), "profiles");
    copy(home.resolve("families/sd48"), folder.resolve("families/sd48"));
    copy(home.resolve("schemas"), folder.resolve("schemas"));
    Path file = folder.resolve("families/sd48/sd48-arrival.json");
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode profile = (ObjectNode) mapper.readTree(file.toFile());
    profile.put("revision", 99).put("sampleRate_Hz", 20_000).put("provingLoad_A", 1);
    keep(
        (ArrayNode) profile.get("steps"),
        Set.of("dead", "first-power", "rest", "full", "discharge"));
    keep((ArrayNode) profile.get("limits"), Set.of("output-full"));
    for (JsonNode step : profile.get("steps")) {
      if (step.get("kind").asText().equals("hold")) {
        ((ObjectNode) step).put("hold_s", 0.4);
      }
    }
    mapper.writeValue(file.toFile(), profile);
    return Catalogue.in(folder.resolve("families"));
  }

  private static void keep(ArrayNode list, Set<String> ids) {
    for (int i = list.size() - 1; i >= 0; i--) {
      if (!ids.contains(list.get(i).get("id").asText())) {
        list.remove(i);
      }
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(file.getFileName().toString()));
      }
    }
  }

  private static ShiftCheck.State state(Workshop shop, BenchDescription bench) {
    return shop.shiftCheck(true).state(bench, LocalDate.now(ZoneOffset.UTC), ZoneOffset.UTC);
  }

  private static ShiftCheck.State real(Workshop shop, BenchDescription bench) {
    return shop.shiftCheck().state(bench, LocalDate.now(ZoneOffset.UTC), ZoneOffset.UTC);
  }

  private static Optional<Verdict> verdict(RunRecord run) {
    assertEquals(RunEnd.Kind.COMPLETED, run.end().kind(), run.end().toString());
    return run.judgement().verdict();
  }

  private static Optional<String> suspect(Workshop shop, RunRecord run) {
    return shop.ledger().benches().suspect(run.bench(), run.tag(), run.id());
  }

  /** Without a meter: with one the run itself finds a divider that is off. */
  private static BenchDescription bench(List<ReferenceUnit> units) {
    BenchDescription b = Descriptions.shippedBench("emulated-sd48");
    return new BenchDescription(
        b.id(),
        b.revision(),
        b.title(),
        b.instruments().stream().filter(i -> !i.role().equals("meter")).toList(),
        b.channels(),
        b.fixture(),
        units,
        b.contacts(),
        b.trip_s(),
        b.origin());
  }

  private RunRecord run(
      Workshop shop, BenchDescription described, String tag, UnitParameters unit, Harness harness)
      throws IOException {
    Clock clock = Clock.system();
    try (EmulatedBench emulated =
        EmulatedBench.open(EmulatedBench.Setup.of(unit, seed++).on(harness))) {
      BenchDescription bench = described.withPorts(emulated.ports());
      BenchOpener opener =
          new BenchOpener(
              new SocketLinks(clock, new SerialLinks(clock)), Descriptions::shippedDialect, clock);
      try (BenchInstruments instruments = opener.open(bench)) {
        return shop.testing()
            .run(
                new Testing.Request(tag, PROFILE, bench, "Ada", true, Optional.empty()),
                instruments,
                new RunIds(bench.id(), new SplittableRandom(seed)),
                RunListener.NONE,
                new Stop());
      }
    }
  }
}
