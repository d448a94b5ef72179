package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.ClaimClass;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.measures.Capture;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClaimReportTest {
  private static final String TAG = "U-00418Q";

  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();
  private final Documents documents =
      new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));

  @Test
  void threeCurvesOneLimitAndWhatFollows() throws Exception {
    Path file =
        write(
            Optional.of(run("c", Waves.marginal(), Purpose.CLAIM)),
            Optional.of(ClaimClass.W3),
            "claim-declined");
    String text = PdfText.of(file);
    assertTrue(text.contains("CLAIM DECLINED You told us: “dies when hot”."), text);
    assertTrue(text.contains("W3, caused where it was installed; row C51"), text);
    assertTrue(text.contains("arrived") && text.contains("left us") && text.contains("returned"));
    assertTrue(text.contains("photo 3f2a: channel 3 burnt"), text);
    assertTrue(text.contains("Dotted: as it came back."), text);
    assertTrue(text.contains("looked at by somebody else"), text);
    assertEquals(1, PdfText.pages(file));
    assertEquals(List.of(), Lasting.faults(file));
  }

  @Test
  void anOpenClaimClaimsNothing() throws Exception {
    String text = PdfText.of(write(Optional.empty(), Optional.empty(), "claim-open"));
    assertTrue(text.contains("CLAIM OPEN"), text);
    assertTrue(text.contains("It has not been tested since it came back."), text);
    assertFalse(text.contains("DECLINED") || text.contains("ACCEPTED"), text);
  }

  private Path write(Optional<RunRecord> returned, Optional<ClaimClass> found, String kind) {
    Dossier now = Dossiers.of(returned.stream().toList(), Samples.pending(), List.of());
    ClaimCase claim =
        new ClaimCase(
            now,
            1,
            "dies when hot",
            "26 November 2027",
            Optional.of(run("a", Waves.weak(), Purpose.ARRIVAL)),
            run("b", Waves.good(), Purpose.SHIP),
            returned,
            found,
            found.map(ClaimClass::usual),
            found.isPresent() ? "C51" : "",
            List.of("photo 3f2a: channel 3 burnt", "seal 0417 intact"),
            "");
    String kept = System.getProperty("corewright.pictures");
    return documents.claimReport(claim, kept == null ? folder : Path.of(kept, kind));
  }

  private RunRecord run(String id, Capture capture, Purpose purpose) {
    return runs.run(id, TAG, capture, purpose, Source.BENCH);
  }
}
