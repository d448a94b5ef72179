package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Remembers on disk which runs were begun, from before anything is energised until their result is
 * in the record. Whoever starts next finds those that a dead program has left, and takes the bench
 * to its safe state before anything else. The file is locked while its program lives.
 */
public final class OpenRuns {
  /** Ending of the file that remembers a run. */
  static final String MARKER = ".begun";

  private OpenRuns() {}

  /** A run that goes on in this process; closing lets others see it as over, not as settled. */
  public record Running(OpenRun run, FileChannel lock) implements AutoCloseable {
    @Override
    public void close() {
      try {
        lock.close();
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }
  }

  /**
   * Remembers a run. Returns once that is on the disk.
   *
   * @throws UncheckedIOException if the folder cannot be written, or knows the run already
   */
  public static Running begin(OpenRun run) {
    try {
      Files.createDirectories(run.folder());
      FileChannel file =
          FileChannel.open(run.marker(), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      StringBuilder text = new StringBuilder();
      run.notes()
          .forEach(
              (name, value) ->
                  text.append(name)
                      .append('\t')
                      .append(value.replaceAll("[\t\r\n]", " "))
                      .append('\n'));
      file.lock();
      file.write(StandardCharsets.UTF_8.encode(text.toString()));
      file.force(true);
      return new Running(run, file);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Runs that a program has left open, oldest name first; those still going on are left out. */
  public static List<OpenRun> in(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<OpenRun> open = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path marker : files.filter(f -> f.toString().endsWith(MARKER)).sorted().toList()) {
        read(folder, marker).ifPresent(open::add);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return open;
  }

  /** Seals what a dead program has left of a run. The run stays open until it is settled. */
  public static Recovered recover(OpenRun run) {
    if (!Files.exists(run.raw())) {
      return new Recovered(run, abandoned("", 0), Optional.empty(), "", Optional.empty());
    }
    StoredCapture capture = CaptureFile.read(run.raw());
    RunEnd end = capture.end().orElseGet(() -> abandoned(capture));
    String sha256 =
        CaptureFile.seal(
            new StoredCapture(capture.header(), capture.segments(), Optional.of(end)),
            run.sealed());
    return new Recovered(run, end, Optional.of(run.sealed()), sha256, capture.holds());
  }

  /** The run's result is in the record. Idempotent. */
  public static void settled(OpenRun run) {
    try {
      Files.deleteIfExists(run.marker());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static RunEnd abandoned(StoredCapture capture) {
    if (capture.segments().isEmpty()) {
      return abandoned("", 0);
    }
    Segment last = capture.segments().get(capture.segments().size() - 1);
    double sampled_s =
        capture.segments().stream().mapToDouble(s -> s.samples() / s.rate_Hz()).sum();
    return abandoned(last.id(), sampled_s);
  }

  private static RunEnd abandoned(String step, double at_s) {
    return new RunEnd(
        RunEnd.Kind.ABANDONED,
        step,
        at_s,
        "The program died during the run, after " + Figures.number(at_s, 3) + " s of samples.",
        "Discharge the unit, then run the profile again.");
  }

  private static Optional<OpenRun> read(Path folder, Path marker) throws IOException {
    try (FileChannel file =
        FileChannel.open(marker, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      if (file.tryLock() == null) {
        return Optional.empty(); // another process is at it
      }
      ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact(file.size()));
      while (bytes.hasRemaining() && file.read(bytes) >= 0) {
        // until all of it is there
      }
      SortedMap<String, String> notes = new TreeMap<>();
      StandardCharsets.UTF_8
          .decode(bytes.flip())
          .toString()
          .lines()
          .map(line -> line.split("\t", 2))
          .filter(words -> words.length == 2)
          .forEach(words -> notes.put(words[0], words[1]));
      String name = String.valueOf(marker.getFileName());
      String runId = name.substring(0, name.length() - MARKER.length());
      return Optional.of(new OpenRun(runId, folder, notes));
    } catch (OverlappingFileLockException ours) {
      return Optional.empty();
    }
  }
}
