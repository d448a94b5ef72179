package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WarrantyReportTest {
  private static final List<String> DONE =
      List.of("Output capacitors, all eight", "Cover gasket", "Seal 8120 fitted");

  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();
  private final Documents documents =
      new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));

  @Test
  void arrivedStandsBesideLeft() throws Exception {
    Path file = write(Source.BENCH, "warranty");
    String text = PdfText.of(file);
    assertTrue(text.contains("Warranty report U-00418Q"), text);
    assertTrue(text.contains("the output stayed at 47.59 ± 0.09 V"), text);
    assertTrue(text.contains("It arrived at 43.6 ± 0.3 V."), text);
    DONE.forEach(line -> assertTrue(text.contains(line), text));
    assertTrue(text.contains("until 26 November 2027"), text);
    assertEquals(1, PdfText.pages(file));
    assertEquals(List.of(), Lasting.faults(file));
  }

  @Test
  void aSpecimenCoversNothing() throws Exception {
    String text = PdfText.of(write(Source.EMULATED, "warranty-specimen"));
    assertTrue(text.contains("Specimen of a warranty report"), text);
    assertTrue(text.contains("A specimen covers nothing."), text);
    assertFalse(text.contains("2027"), text);
  }

  @Test
  void nothingLeavesThatWasNotRebuiltOrDidNotPass() {
    RunRecord arrived = run("a", Waves.weak(), Purpose.ARRIVAL);
    RunRecord failed = run("b", Waves.weak(), Purpose.SHIP);
    assertEquals(
        "Unit U-00418Q was not rebuilt on this visit. Write down what was done to it first",
        refused(List.of(arrived), List.of()));
    assertEquals(
        "The last run of unit U-00418Q is not a test before shipping [final-test]. Run its ship"
            + " profile after it was closed",
        refused(List.of(arrived), DONE));
    assertEquals(
        "The last test before shipping of unit U-00418Q came to FAIL: Output fell to 43.6 ± 0.3 V"
            + " at 2.00 A; the limit is 46.5 V. Only a PASS leaves with a warranty",
        refused(List.of(arrived, failed), DONE));
  }

  private String refused(List<RunRecord> all, List<String> done) {
    return assertThrows(
            Refusal.class,
            () -> documents.warrantyReport(Dossiers.of(all, Dossiers.rebuild(), done), folder))
        .getMessage();
  }

  private RunRecord run(String id, corewright.measures.Capture capture, Purpose purpose) {
    return runs.run(id, "U-00418Q", capture, purpose, Source.BENCH);
  }

  private Path write(Source source, String kind) {
    RunRecord arrived = runs.run("a", "U-00418Q", Waves.weak(), Purpose.ARRIVAL, source);
    RunRecord left = runs.run("b", "U-00418Q", Waves.good(), Purpose.SHIP, source);
    String kept = System.getProperty("corewright.pictures");
    return documents.warrantyReport(
        Dossiers.of(List.of(arrived, left), Dossiers.rebuild(), DONE),
        kept == null ? folder : Path.of(kept, kind));
  }
}
