package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.ReadProgress;
import corewright.bench.capture.Recording;
import corewright.bench.capture.csv.Overrides;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.files.BadFile;
import corewright.files.Origin;
import corewright.measures.Capture;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.chart.Charts;
import corewright.reports.chart.Evidence;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/** A file that somebody hands in without saying what it is. It is read and never run. */
public final class DroppedFile {
  /** Lines that tell a record from a log; both have their headings far above. */
  private static final int FIRST_LINES = 400;

  private static final int FIRST_BYTES = 1 << 17;

  /** Text with a load current that is sampled at least this fast was taken on a bench, Hz. */
  private static final double BENCH_RATE_HZ = 200;

  private DroppedFile() {}

  /** What a file is taken for. */
  public enum Kind {
    /** What a scan tool wrote in a vehicle. */
    LOG,
    /** What an instrument recorded of a unit under load. */
    RECORD
  }

  /** Told by what is in it; its name says no more than whether it is packed. */
  public static Kind tell(Path file) {
    try {
      if (CaptureFile.isCapture(file)) {
        return Kind.RECORD;
      }
      List<String> first = firstLines(file);
      Path head = Files.createTempFile(file.toAbsolutePath().getParent(), "head", ".csv");
      try {
        Files.write(head, first, StandardCharsets.UTF_8);
        Capture capture = Recording.read(head, ReadProgress.UNSEEN, Overrides.NONE).capture();
        return capture.load().isPresent() && capture.sampleRate_Hz() >= BENCH_RATE_HZ
            ? Kind.RECORD
            : Kind.LOG;
      } finally {
        Files.deleteIfExists(head);
      }
    } catch (IOException | UncheckedIOException | BadFile none) {
      return Kind.LOG; // whose reader says what is wrong with it
    }
  }

  /** Read as bytes first: a file may be one line of any length. */
  private static List<String> firstLines(Path file) throws IOException {
    boolean packed = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".gz");
    try (InputStream in = Files.newInputStream(file);
        InputStream plain = packed ? new GZIPInputStream(in) : in) {
      String text = new String(plain.readNBytes(FIRST_BYTES), StandardCharsets.ISO_8859_1);
      List<String> lines = text.lines().limit(FIRST_LINES).toList();
      boolean cut = lines.size() < FIRST_LINES && lines.size() > 1 && text.length() == FIRST_BYTES;
      return cut ? lines.subList(0, lines.size() - 1) : lines;
    }
  }

  /** A record that was measured, as a run that nobody keeps: to be drawn and shown as one. */
  public static RunRecord asRun(MeasureFile.Result result, Instant read) {
    Origin none = new Origin("", "", "");
    double length_s =
        result.recording().capture().size() / result.recording().capture().sampleRate_Hz();
    return new RunRecord(
        "dropped",
        "not kept",
        result.profile().map(p -> p.purpose().name().toLowerCase(Locale.ROOT)).orElse(""),
        1,
        Source.IMPORTED,
        read,
        read,
        "",
        "import",
        "",
        result.profile().map(Profile::id).orElse(""),
        result.profile().map(Profile::revision).orElse(0),
        result.profile().map(Profile::origin).orElse(none),
        result.family().map(Family::origin).orElse(none),
        Optional.empty(),
        List.of(),
        Software.version(),
        "dropped",
        "",
        result.recording().end().orElse(RunEnd.completed(length_s)),
        List.of(),
        Optional.of(result.run()),
        result
            .judgement()
            .orElse(new Judgement(Optional.empty(), Optional.empty(), "", List.of(), List.of())));
  }

  /** Draws such a run into a folder; empty where it has no samples. */
  public static Optional<Path> draw(
      MeasureFile.Result result, RunRecord run, Locale region, Path folder) {
    Evidence evidence =
        new Evidence() {
          @Override
          public Optional<Capture> capture(RunRecord any) {
            return Optional.of(result.recording().capture());
          }

          @Override
          public Optional<Family> family(RunRecord any) {
            return result.family();
          }

          @Override
          public Optional<Profile> profile(RunRecord any) {
            return result.profile();
          }
        };
    return new Charts(evidence, region).svg(run, folder);
  }
}
