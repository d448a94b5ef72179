package corewright.station.work;

import corewright.bench.port.Links;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.bench.wirelog.WireLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** The wire log of one run, where it was asked for: beside the run's capture, under its name. */
public final class KeptWire implements AutoCloseable {
  private static final String ENDING = ".wire";

  private final Path file;
  private final Optional<WireLog> log;
  private final Clock clock;
  private final Consumer<Path> nameless;
  private boolean kept;

  private KeptWire(Path file, Optional<WireLog> log, Clock clock, Consumer<Path> nameless) {
    this.file = file;
    this.log = log;
    this.clock = clock;
    this.nameless = nameless;
  }

  /** None is asked for. */
  public static KeptWire none(Folders folders, Clock clock) {
    return begin(false, folders, clock, none -> {});
  }

  /**
   * Begins one, if it is asked for; until the run has a name it is called by the time of day.
   *
   * @param nameless is told of a log whose run never got so far as to have one
   */
  public static KeptWire begin(
      boolean asked, Folders folders, Clock clock, Consumer<Path> nameless) {
    Path file = folders.captures().resolve("begun-" + clock.wall().toEpochMilli() + ENDING);
    return new KeptWire(
        file, asked ? Optional.of(WireLog.begin(file, clock)) : Optional.empty(), clock, nameless);
  }

  /** The same links, written down where that was asked for. */
  public Links over(Links links) {
    return log.map(l -> l.over(links)).orElse(links);
  }

  /** The clock that drivers and engine must go by. */
  public Clock clock() {
    return log.map(l -> l.over(clock)).orElse(clock);
  }

  /**
   * Ends the log and gives it the run's name. The bench must be closed by then: its instruments are
   * given back to their front panels over the same wires.
   */
  public Optional<Path> keepFor(RunRecord run) {
    return log.map(
        l -> {
          l.close();
          try {
            Path named = Files.move(file, file.resolveSibling(run.id() + ENDING));
            kept = true;
            return named;
          } catch (IOException refused) {
            throw new UncheckedIOException(refused);
          }
        });
  }

  /** Why the log is not whole, once it is ended, as a sentence; empty where it is. */
  public Optional<String> flaw() {
    return log.flatMap(WireLog::flaw)
        .map(why -> "The wire log is not whole: it could not be written any more (" + why + ").");
  }

  /** What went wrong before a run began is in its log too; an empty one says nothing and goes. */
  @Override
  public void close() {
    log.ifPresent(WireLog::close);
    if (log.isEmpty() || kept) {
      return;
    }
    if (log.get().events() > 0) {
      nameless.accept(file);
      return;
    }
    try {
      Files.deleteIfExists(file);
    } catch (IOException refused) {
      throw new UncheckedIOException(refused);
    }
  }
}
