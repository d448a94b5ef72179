package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.Recording;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.run.Clock;
import corewright.measures.MeasuredRun;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Ledger;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Takes a file that another instrument recorded as a run of a unit. It never certifies. */
public final class Importing {
  private static final String BENCH = "import";

  private final Catalogue catalogue;
  private final Ledger ledger;
  private final Folders folders;
  private final Clock clock;

  public Importing(Catalogue catalogue, Ledger ledger, Folders folders, Clock clock) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.folders = folders;
    this.clock = clock;
  }

  /**
   * Keeps a copy of the file, measures it, judges it, and writes down the run.
   *
   * @param profile file or what it is held against; empty: the family's default profile
   * @param settle_s overrides the profile's; empty: the profile's, else the meter's default
   * @param guard_s likewise
   */
  public record Request(
      String tag,
      Path file,
      Optional<Profile> profile,
      Optional<Double> settle_s,
      Optional<Double> guard_s,
      String who) {}

  /** Runs the whole way from file to record. */
  public RunRecord take(Request request, RunIds ids) {
    Family family = catalogue.family(ledger.dossier(request.tag()).core().family());
    Profile profile = request.profile().orElseGet(() -> catalogue.defaultProfile(family));
    String purpose = profile.purpose().name().toLowerCase(Locale.ROOT);
    int number = ledger.nextRunNumber(request.tag(), purpose);
    String id = ids.next(request.tag(), purpose, number);
    Recording recording = Recording.read(request.file());
    MeasuredRun measured =
        RunMeter.read(
            recording.capture(),
            Assessing.settings(
                family, profile, Optional.empty(), request.settle_s(), request.guard_s()));
    RunEnd end = RunEnd.completed(recording.capture().size() / measured.sampleRate_Hz());
    Path kept = keep(request.file(), id);
    RunRecord record =
        new RunRecord(
            id,
            request.tag(),
            purpose,
            number,
            Source.IMPORTED,
            clock.wall(),
            clock.wall(),
            request.who(),
            BENCH,
            "",
            profile.id(),
            profile.revision(),
            profile.origin(),
            family.origin(),
            Optional.empty(),
            List.of(
                new EquipmentUsed(
                    "file", request.file().getFileName().toString(), "not calibrated")),
            Software.version(),
            folders.relative(kept),
            CaptureFile.sha256(kept),
            end,
            List.of(),
            Optional.of(measured),
            Assessing.judge(Optional.of(measured), family, profile, end));
    ledger.runEnded(record);
    return record;
  }

  /** A copy beside the ledger, under the run's name: the record must not depend on where it lay. */
  private Path keep(Path file, String id) {
    String name = file.getFileName().toString();
    Path kept = folders.captures().resolve(id + "-" + name);
    try {
      return Files.copy(file, kept, StandardCopyOption.COPY_ATTRIBUTES);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot keep a copy of " + file, refused);
    }
  }
}
