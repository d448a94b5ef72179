package corewright.station.work;

import corewright.bench.capture.OpenRuns;
import corewright.bench.hand.Hands;
import corewright.bench.record.RunEnd;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.Confirmations;
import corewright.bench.run.RunEngine;
import corewright.bench.run.RunListener;
import corewright.bench.run.RunPlan;
import corewright.bench.run.RunResult;
import corewright.bench.run.Stop;
import corewright.bench.wire.BenchOpener;
import corewright.bench.wirelog.PlayedLog;
import corewright.fixtures.describe.BenchDescription;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A run once more from its wire log: the drivers and the engine of this program get the bytes of
 * then. No port is opened, no unit is energised, and nothing gets into the record.
 */
public final class Playback {
  private static final String RAW = ".raw";

  private final Catalogue catalogue;
  private final Home home;
  private final Clock clock;

  public Playback(Catalogue catalogue, Home home, Clock clock) {
    this.catalogue = catalogue;
    this.home = home;
    this.clock = clock;
  }

  /**
   * What became of it.
   *
   * @param astray something else was asked for than then, or more than the log has
   * @param left events of the log that were not come to
   * @param raw its samples, in the folder that was given
   * @param same whether they are those of the capture beside the log, to the last byte; empty where
   *     none lies there
   */
  public record Played(
      RunEnd end,
      List<String> troubles,
      boolean astray,
      int left,
      Optional<Path> raw,
      Optional<Boolean> same) {
    public Played {
      troubles = List.copyOf(troubles);
    }
  }

  /**
   * Plays a log back.
   *
   * @param bench as it was described then
   * @param file its description, beside which dialects may lie
   * @param profile that was run
   * @param folder where its samples go; not that of the log
   * @throws Refused if it is no wire log
   * @throws corewright.bench.port.InstrumentFault if it does not even come to the run: as then, or
   *     because the bench is another
   */
  public Played play(
      Path wire, BenchDescription bench, Path file, Profile profile, Path folder, Hands hands) {
    PlayedLog log = read(wire);
    Clock then = log.clock(clock);
    String name = wire.getFileName().toString().replaceFirst("\\.wire$", "");
    RunPlan plan =
        new RunPlan(
            name,
            RunIds.tag(name, bench.id()).orElse("played back"), // a capture names its unit
            catalogue.family(profile.family()),
            profile,
            bench,
            "played back",
            folder,
            new Confirmations(true, Optional.of("nobody"), Optional.empty(), List.of()));
    BenchOpener opener = new BenchOpener(log, new Dialects(home, file), then, Optional.of(hands));
    RunResult result;
    try (BenchInstruments instruments = opener.open(bench)) {
      Testing.source(instruments); // asked before each run, and so in the log
      result = new RunEngine(then).run(plan, instruments, RunListener.NONE, new Stop());
    }
    OpenRuns.settled(result.run());
    Optional<Path> raw = Optional.of(folder.resolve(name + RAW)).filter(Files::exists);
    return new Played(
        result.end(),
        result.troubles(),
        log.isAstray(),
        log.left(),
        raw,
        raw.flatMap(r -> same(r, wire.resolveSibling(name + RAW))));
  }

  private static PlayedLog read(Path wire) {
    try {
      return PlayedLog.of(wire);
    } catch (IllegalArgumentException bad) {
      throw new Refused(
          String.valueOf(bad.getMessage()),
          "Name a file that 'run --wire-log' has left beside a capture.");
    } catch (UncheckedIOException unreadable) {
      throw new Refused("There is no file " + wire + " that can be read", "Check its name.");
    }
  }

  private static Optional<Boolean> same(Path now, Path then) {
    try {
      return Files.exists(then) ? Optional.of(Files.mismatch(now, then) < 0) : Optional.empty();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
