package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Finding;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.measures.Capture;
import corewright.measures.Figures;
import corewright.profiles.Profile;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestReportTest {
  static final Shop SHOP =
      new Shop(
          "Mill Yard Rebuild",
          "4 Mill Yard, Brackwater BW2 7QT",
          "",
          "Write to us within 30 days if you doubt a result.");

  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();
  private final Documents documents =
      new Documents(SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));

  @ParameterizedTest
  @CsvSource({"good, PASS", "weak, FAIL", "marginal, MARGINAL", "hiccup, FAIL", "sagging, VOID"})
  void everyVerdictHasItsPage(String kind, Verdict verdict) throws Exception {
    Capture capture = (Capture) Waves.class.getMethod(kind).invoke(null);
    RunRecord run = runs.run(kind, "U-00418Q", capture, Profile.Purpose.ARRIVAL, Source.EMULATED);
    Decision decision =
        switch (verdict) {
          case PASS -> Dossiers.giveBack();
          case VOID -> Samples.pending();
          default -> Dossiers.rebuild();
        };
    Path file = write(Dossiers.of(List.of(run), decision, List.of()), kind);
    String text = PdfText.of(file);
    assertEquals(Optional.of(verdict), run.judgement().verdict());
    assertTrue(text.contains(verdict + " "), text);
    assertTrue(text.contains("SPECIMEN"), text);
    for (Finding finding : run.judgement().findings()) {
      if (finding.limit().headline()) {
        String reading = Figures.withU(finding.measurement().orElseThrow());
        assertTrue(verdict == Verdict.VOID || text.contains(reading), reading + " in " + text);
      }
    }
    assertTrue(text.contains("U-00418 Q") && text.contains("SN 0698-114"), text);
    assertTrue(text.contains(decision.sentence()), text);
    assertTrue(text.contains(decision.question()), text);
    assertTrue(
        text.matches(
            "Mill Yard Rebuild .*Unit U-00418.*"
                + verdict
                + " .*Which build .*What we do .*Not tested .*SPECIMEN.*Results are.*"),
        "read in the order in which it stands: " + text);
    assertEquals(1, PdfText.pages(file));
    assertEquals(List.of(), Lasting.faults(file));
  }

  @Test
  void aVoidRunNeverSaysPass() throws Exception {
    RunRecord run = runs.run("v", "U-00418Q", Waves.sagging(), Profile.Purpose.SHIP, Source.BENCH);
    String text =
        PdfText.of(write(Dossiers.of(List.of(run), Samples.pending(), List.of()), "void"));
    assertFalse(text.contains("PASS"), text);
    assertTrue(text.contains("nothing follows about the module"), text);
    assertFalse(text.contains("SPECIMEN"), text);
  }

  @Test
  void aUnitThatWasNeverPoweredHasAPageWithoutACurve() throws Exception {
    RunRecord run =
        runs.run(
            "short",
            "U-00418Q",
            Optional.empty(),
            Profile.Purpose.ARRIVAL,
            Source.EMULATED,
            new RunEnd(
                RunEnd.Kind.REFUSED_TO_POWER,
                "first-power",
                0.4,
                "The supply stood at 1.2 V and 0.50 A for 2 s: a short.",
                "Do not power it again."));
    Path file = write(Dossiers.of(List.of(run), Dossiers.rebuild(), List.of()), "unsafe");
    String text = PdfText.of(file);
    assertTrue(text.contains("UNSAFE"), text);
    assertTrue(
        text.contains("The supply stood at 1.2 V") && text.contains("There is no curve"), text);
    assertEquals(List.of(), Lasting.faults(file));
  }

  @Test
  void aUnitThatCannotBeIdentifiedAsksItsQuestion() throws Exception {
    Path file = write(Dossiers.of(List.of(), Samples.pending(), List.of()), "pending");
    String text = PdfText.of(file);
    assertTrue(text.contains("PENDING"), text);
    assertTrue(text.contains("How many rows of pins has the connector?"), text);
    assertTrue(text.contains("asked of H. Oduya, until 30 November 2026"), text);
    assertEquals(1, PdfText.pages(file));
    assertEquals(List.of(), Lasting.faults(file));
  }

  private Path write(Dossier dossier, String kind) throws IOException {
    String kept = System.getProperty("corewright.pictures");
    return documents.testReport(dossier, kept == null ? folder : Path.of(kept, kind));
  }
}
