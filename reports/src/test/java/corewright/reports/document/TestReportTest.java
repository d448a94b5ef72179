package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.measures.Capture;
import corewright.profiles.Profile;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TestReportTest {
  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();
  private final Documents documents =
      new Documents(
          new Shop(
              "Mill Yard Rebuild",
              "4 Mill Yard, Brackwater BW2 7QT",
              "",
              "Write to us within 30 days if you doubt a result."), runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));

  @ParameterizedTest
  @ValueSource(strings = {"good", "weak", "marginal", "hiccup", "sagging"})
  void everyVerdictHasItsPage(String kind) throws Exception {
    Capture capture = (Capture) Waves.class.getMethod(kind).invoke(null);
    RunRecord run = runs.run(kind, "U-00418Q", capture, Profile.Purpose.ARRIVAL, Source.EMULATED);
    long start = System.nanoTime();
    Path file = documents.testReport(dossier(List.of(run)), out(kind));
    System.out.println(kind + " ms=" + (System.nanoTime() - start) / 1_000_000);
    assertTrue(Files.size(file) > 1000);
  }

  private static Dossier dossier(List<RunRecord> runs) {
    Decision rebuild =
        new Decision(
            "D64",
            2,
            Disposition.REBUILD,
            "queue",
            "It fails under load and its build can be rebuilt.",
            List.of("Output fell to 43.6 ± 0.3 V at 2.00 A.", "Build A2 is filled with soft gel."),
            "",
            "",
            Optional.empty(),
            Map.of());
    return new Dossier(
        Samples.core("U-00418Q", "SN 0698-114"),
        1,
        Samples.answers(),
        Optional.of(Samples.identification()),
        runs,
        Optional.of(rebuild),
        List.of());
  }

  private Path out(String kind) {
    String kept = System.getProperty("corewright.pictures");
    return kept == null ? folder : Path.of(kept, kind);
  }
}
