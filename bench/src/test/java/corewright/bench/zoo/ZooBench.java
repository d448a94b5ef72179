package corewright.bench.zoo;

import corewright.bench.judge.Judge;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.Confirmations;
import corewright.bench.run.FakeClock;
import corewright.bench.run.RunEngine;
import corewright.bench.run.RunListener;
import corewright.bench.run.RunPlan;
import corewright.bench.run.RunResult;
import corewright.bench.run.Stop;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.measures.ChannelDoubt;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whole runs on emulated units: engine, drivers, wire, meter, judge. */
final class ZooBench {
  private final Catalogue catalogue;

  ZooBench(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** What was measured, how the run ended, and what was made of it. */
  record Judged(MeasuredRun run, RunEnd end, Judgement judgement) {}

  /** Over memory. */
  Judged inMemory(Setup setup, Profile profile) {
    FakeClock clock = new FakeClock();
    Setup untimed = setup.on(() -> 0L); // the watchdog has nothing to fear
    BenchDescription bench = description(setup);
    BenchOpener opener =
        new BenchOpener(
            new MemoryLinks(EmulatedBench.instruments(untimed), clock),
            Descriptions::shippedDialect,
            clock);
    try (BenchInstruments instruments = opener.open(bench)) {
      return run(profile, bench, instruments, clock);
    }
  }

  /** Over pseudo-terminals, through the serial library. */
  Judged overPty(Setup setup, Profile profile) {
    Clock clock = Clock.system();
    try (EmulatedBench emulated = EmulatedBench.open(setup)) {
      BenchDescription bench = description(setup).withPorts(emulated.ports());
      BenchOpener opener =
          new BenchOpener(new SerialLinks(clock), Descriptions::shippedDialect, clock);
      try (BenchInstruments instruments = opener.open(bench)) {
        return run(profile, bench, instruments, clock);
      }
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static BenchDescription description(Setup setup) {
    return Descriptions.shippedBench("emulated-" + setup.unit().family());
  }

  private Judged run(
      Profile profile, BenchDescription bench, BenchInstruments instruments, Clock clock) {
    Family family = catalogue.family(profile.family());
    Path folder = folder();
    try {
      RunPlan plan =
          new RunPlan(
              "zoo",
              "CW-1",
              family,
              profile,
              bench,
              "Ada",
              folder,
              new Confirmations(true, Optional.of("Grace"), Optional.empty(), List.of()));
      RunResult result = new RunEngine(clock).run(plan, instruments, RunListener.NONE, new Stop());
      MeterSettings settings = settings(family, profile, bench);
      MeasuredRun run =
          result
              .capture()
              .filter(c -> c.size() > 0)
              .map(c -> RunMeter.read(c, settings))
              .map(result.beside()::with)
              .orElseGet(() -> result.beside().with(nothing(profile)));
      return new Judged(run, result.end(), Judge.judge(run, family, profile, result.end()));
    } finally {
      delete(folder);
    }
  }

  /** As the station reads a capture. */
  private static MeterSettings settings(Family family, Profile profile, BenchDescription bench) {
    return new MeterSettings(
            profile.settle_s(),
            profile.guard_s(),
            Optional.of(family.output_V()),
            bench.channels().stream()
                .collect(
                    Collectors.toMap(
                        ChannelCalibration::channel,
                        c -> new ChannelDoubt(c.gain_rel(), c.offset()))))
        .withCircuit(Optional.of(family.switching_Hz()), Optional.empty());
  }

  private static MeasuredRun nothing(Profile profile) {
    return new MeasuredRun(
        profile.sampleRate_Hz(), 0, "nothing was sampled", List.of(), Map.of(), List.of());
  }

  private static Path folder() {
    try {
      return Files.createTempDirectory("zoo");
    } catch (IOException refused) {
      throw new UncheckedIOException(refused);
    }
  }

  private static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    } catch (IOException refused) {
      throw new UncheckedIOException(refused);
    }
  }
}
