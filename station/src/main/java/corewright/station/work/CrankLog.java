package corewright.station.work;

import corewright.bench.capture.LogFile;
import corewright.bench.log.Comparison;
import corewright.bench.log.LogAnalysis;
import corewright.bench.log.LogFamily;
import corewright.bench.log.LogReading;
import corewright.bench.log.LogRequest;
import corewright.bench.log.Window;
import corewright.bench.log.table.Choices;
import corewright.profiles.Catalogue;
import corewright.reports.chart.LogCharts;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads a customer's log, or one from before and one from after. Keeps no record. */
public final class CrankLog {
  private final Catalogue catalogue;

  public CrankLog(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * What is asked for.
   *
   * @param after a log of the same vehicle from later
   * @param family id of the unit's family; told by the output's rest where empty
   * @param choices what a person said instead of letting it be guessed
   * @param window that a person gave, for logs in which no crank is found
   */
  public record Request(
      Path file,
      Optional<Path> after,
      Optional<String> family,
      Choices choices,
      Optional<Window> window) {}

  /** One log with what identifies its file. */
  public record Read(LogReading reading, String sha256, String encoding) {}

  /** What came of it. */
  public record Result(Read log, Optional<Read> after, Optional<Comparison> comparison) {}

  /**
   * Reads, judges, compares.
   *
   * @throws corewright.files.BadFile if a log cannot be read or there is no such family
   */
  public Result read(Request request) {
    Optional<LogFamily> named = request.family().map(catalogue::family).map(LogFamily::of);
    List<LogFamily> all = catalogue.families().stream().map(LogFamily::of).toList();
    LogRequest asked = new LogRequest(named, all, request.choices(), request.window());
    Read first = read(request.file(), asked);
    Optional<Read> after = request.after().map(file -> read(file, asked));
    return new Result(first, after, after.map(a -> Comparison.of(first.reading(), a.reading())));
  }

  /**
   * Draws what was read, the log from before above the one from after.
   *
   * @param picture ends in .svg or .png; an earlier picture of that name is written over
   * @throws Refused if it ends otherwise, cannot be written, or is one of the logs
   */
  public static void draw(Result result, Path picture) {
    if (!LogCharts.canWrite(picture)) {
      throw new Refused(
          picture + " ends neither in .svg nor in .png", "Name the picture plot.svg, say.");
    }
    List<LogReading> logs =
        Stream.concat(Stream.of(result.log()), result.after().stream()).map(Read::reading).toList();
    boolean isLog = logs.stream().anyMatch(log -> same(Path.of(log.file()), picture));
    if (isLog) {
      throw new Refused(picture + " is the log itself", "Name another file for the picture.");
    }
    try {
      LogCharts.write(logs, picture);
    } catch (UncheckedIOException broken) {
      throw new Refused(
          String.valueOf(broken.getMessage()),
          "Name a file in a folder that is there and can be written to.");
    }
  }

  private static boolean same(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private static Read read(Path file, LogRequest asked) {
    LogFile log = LogFile.open(file);
    return new Read(LogAnalysis.of(log, asked), log.sha256(), log.encoding());
  }
}
