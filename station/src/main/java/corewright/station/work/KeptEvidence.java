package corewright.station.work;

import corewright.bench.capture.Recording;
import corewright.bench.record.RunRecord;
import corewright.measures.Capture;
import corewright.profiles.Family;
import corewright.profiles.KeptTexts;
import corewright.profiles.Profile;
import corewright.reports.chart.Evidence;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Curves from the captures beside the ledger, limits from the texts that the run itself stored: a
 * picture drawn years later shows what was judged then.
 */
public final class KeptEvidence implements Evidence {
  private final Folders folders;

  public KeptEvidence(Folders folders) {
    this.folders = folders;
  }

  @Override
  public Optional<Capture> capture(RunRecord run) {
    if (run.capture().isEmpty()) {
      return Optional.empty();
    }
    Path file = folders.root().resolve(run.capture());
    return run.measured().filter(m -> !m.holds().isEmpty()).isPresent() && Files.isRegularFile(file)
        ? Optional.of(Recording.read(file).capture())
        : Optional.empty();
  }

  @Override
  public Optional<Family> family(RunRecord run) {
    return Optional.of(KeptTexts.family(run.family()));
  }

  @Override
  public Optional<Profile> profile(RunRecord run) {
    return Optional.of(KeptTexts.profile(run.profile(), KeptTexts.family(run.family())));
  }
}
