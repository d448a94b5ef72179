package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.Recording;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.fixtures.describe.Calibration;
import corewright.measures.MeasuredRun;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.RunBegun;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

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
   * @param calibration of the instrument that recorded the file
   */
  public record Request(
      String tag,
      Path file,
      Optional<Profile> profile,
      Optional<Double> settle_s,
      Optional<Double> guard_s,
      Optional<Calibration> calibration,
      String who) {}

  /** Runs the whole way from file to record. */
  public RunRecord take(Request request, RunIds ids) {
    Family family = catalogue.family(ledger.dossier(request.tag()).core().family());
    Profile profile = request.profile().orElseGet(() -> catalogue.defaultProfile(family));
    String purpose = profile.purpose().name().toLowerCase(Locale.ROOT);
    int number = ledger.runs().nextNumber(request.tag(), purpose);
    String id = ids.next(request.tag(), purpose, number);
    Recording recording = Recording.read(request.file());
    List<ChannelCalibration> channels =
        request.calibration().map(c -> OwnChannels.of(c, recording)).orElse(List.of());
    MeasuredRun measured =
        RunMeter.read(
            recording.capture(),
            Assessing.settings(family, profile, channels, request.settle_s(), request.guard_s()));
    Path kept = keep(request.file(), id);
    Instant now = clock.wall();
    RunBegun begun =
        new RunBegun(
            id,
            request.tag(),
            purpose,
            number,
            Source.IMPORTED,
            now,
            request.who(),
            BENCH,
            "",
            profile.id(),
            folders.relative(kept));
    RunRecord record =
        new RunOutcome(
                now,
                request.calibration().map(Calibration::origin),
                List.of(new EquipmentUsed("file", name(request.file()), certificates(channels))),
                begun.capture(),
                CaptureFile.sha256(kept),
                RunEnd.completed(recording.capture().size() / measured.sampleRate_Hz()),
                List.of(),
                Optional.of(measured))
            .of(begun, family, profile);
    ledger.runEnded(record);
    return record;
  }

  private static String certificates(List<ChannelCalibration> channels) {
    return channels.isEmpty()
        ? "not calibrated"
        : channels.stream()
            .map(c -> c.channel() + ": " + c.calibration())
            .collect(Collectors.joining("; "));
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  /** A copy beside the ledger, under the run's name: the record must not depend on where it lay. */
  private Path keep(Path file, String id) {
    Path kept = folders.captures().resolve(id + "-" + name(file));
    try {
      return Files.copy(file, kept, StandardCopyOption.COPY_ATTRIBUTES);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot keep a copy of " + file, refused);
    }
  }
}
