package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
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
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HandoutsTest {
  private static final String TAG = "U-00418Q";
  private static final List<String> DONE = List.of("Output capacitors C1 to C4, lot 2644-K");

  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();
  private final Documents documents = documents(Locale.UK);

  @ParameterizedTest
  @EnumSource(Label.class)
  void theTagOfACoreIsReadBackByAScanner(Label label) throws Exception {
    Path file = documents.coreTag(untested(), label, folder(label.size()));
    assertEquals(TAG, SymbolReader.read(file, BarcodeFormat.QR_CODE, 300));
    if (label != Label.SMALL) {
      assertEquals(TAG, SymbolReader.read(file, BarcodeFormat.CODE_128, 300));
    }
    String text = PdfText.of(file);
    assertTrue(text.contains("U-00418 Q"), text);
    assertFalse(text.contains("Orrel"), "nothing about the customer: " + text);
    assertEquals(1, PdfText.pages(file));
  }

  @ParameterizedTest
  @EnumSource(Label.class)
  void theLabelOfARebuiltUnitIsReadBackByAScanner(Label label) throws Exception {
    Path file = documents.unitLabel(rebuilt(Source.BENCH), label, folder("unit-" + label.size()));
    assertEquals(TAG, SymbolReader.read(file, BarcodeFormat.QR_CODE, 300));
    String text = PdfText.of(file);
    assertTrue(text.contains("REBUILT 26 November 2026"), text);
    assertFalse(text.contains("Orrel") || text.contains("SPECIMEN"), text);
    assertEquals(1, PdfText.pages(file));
  }

  @Test
  void theLabelOfAnEmulatedUnitIsASpecimen() throws Exception {
    Path file = documents.unitLabel(rebuilt(Source.EMULATED), Label.WIDE, folder);
    assertTrue(PdfText.of(file).contains("SPECIMEN"));
    last(file);
    last(documents.coreTag(untested(), Label.TALL, folder));
  }

  /** A word that breaks at its last letter breaks the roll of labels, too. */
  @ParameterizedTest
  @EnumSource(Label.class)
  void theTagOfAnEmulatedCoreSaysSpecimenOnOneLabel(Label label) throws Exception {
    Dossier core = rebuilt(Source.EMULATED);
    Path file = documents.coreTag(core, label, folder("specimen-" + label.size()));
    String text = PdfText.of(file);
    assertTrue(text.contains("SPECIMEN"), text);
    assertEquals(1, PdfText.pages(file));
  }

  /** An old book knows the day alone: seven hours behind UTC it is still that day. */
  @Test
  void aDayFromOldBooksIsThatDayOnPaperInDenver() throws Exception {
    Documents there =
        new Documents(
            TestReportTest.SHOP,
            runs,
            Clock.fixed(Samples.MORNING, java.time.ZoneId.of("America/Denver")));
    Core c = Samples.core(TAG, "1");
    java.time.Instant day = java.time.Instant.parse("2019-03-04T00:00:00Z");
    Core old = new Core(TAG, c.family(), "1", c.label(), "", c.mode(), "", day, "the old books");
    Dossier brought = Dossiers.of(old, List.of(), Dossiers.giveBack(), List.of());
    String text = PdfText.of(there.letter(brought, folder));
    assertTrue(text.contains("We received unit U-00418Q on 4 March 2019."), text);
  }

  @Test
  void onlyARebuiltUnitThatPassedGetsItsLabel() {
    Dossier tested = dossier(Waves.weak(), Purpose.ARRIVAL, Dossiers.rebuild());
    assertThrows(Refusal.class, () -> documents.unitLabel(tested, Label.WIDE, folder));
  }

  @Test
  void theLetterOfAFailingUnitHasTheReadingAndNamesNoPart() throws Exception {
    Path file =
        documents.letter(
            dossier(Waves.weak(), Purpose.ARRIVAL, Dossiers.rebuild()), folder("letter-rebuild"));
    String text = PdfText.of(file);
    assertTrue(text.contains("the output was down at 43.6 ± 0.3 V"), text);
    assertTrue(text.contains("You told us: “will not start when cold”"), text);
    assertTrue(text.contains("which part is behind it is not confirmed"), text);
    assertTrue(text.contains("REBUILD It fails under load"), text);
    last(file);
  }

  @Test
  void theLetterOfAGoodUnitSaysWhatToMeasureBeforeRefitting() throws Exception {
    Path file =
        documents.letter(
            dossier(Waves.good(), Purpose.ARRIVAL, Dossiers.giveBack()), folder("letter-return"));
    String text = PdfText.of(file);
    assertTrue(text.contains("That does not prove that it never will."), text);
    // common practice, no source: 10 V while cranking, 0.2 V in each lead
    assertTrue(text.contains("10 V or more") && text.contains("under 0.2 V"), text);
    last(file);
  }

  @Test
  void aVoidRunSaysNothingAboutTheUnitAndAsksItsQuestion() throws Exception {
    Path file =
        documents.letter(
            dossier(Waves.sagging(), Purpose.ARRIVAL, Samples.pending()), folder("letter-pending"));
    String text = PdfText.of(file);
    assertTrue(text.contains("nothing follows about the module"), text);
    assertFalse(text.contains("not proved") || text.contains("could not make it fail"), text);
    assertTrue(text.contains("How many rows of pins has the connector?"), text);
    assertTrue(text.contains("H. Oduya looks after this. We write again by 30 November"), text);
    last(file);
  }

  /** Whoever reads the letter is asked, and not told that "customer looks after this". */
  @Test
  void aQuestionIsPutToWhomItIs() throws Exception {
    String asked = letterOwned("customer");
    assertTrue(asked.contains("Before we go on, we need to know from you: How many rows"), asked);
    assertTrue(asked.contains("Please answer by 30 November 2026."), asked);
    String ours = letterOwned("bench");
    assertTrue(ours.contains("We look into it, and write again by 30 November 2026."), ours);
    assertFalse(asked.contains("looks after") || ours.contains("looks after"), ours);
  }

  private String letterOwned(String owner) throws Exception {
    Decision d = Samples.pending();
    Decision owned =
        new Decision(
            d.row(),
            d.tableRevision(),
            d.disposition(),
            d.destination(),
            d.sentence(),
            d.reasons(),
            d.finding(),
            d.diagnosis(),
            d.question(),
            owner,
            d.due(),
            d.saw());
    return PdfText.of(
        documents.letter(Dossiers.of(List.of(), owned, List.of()), folder("letter-" + owner)));
  }

  @Test
  void eachWayOfOwningAUnitHasItsOwnWordsForAReplacement() throws Exception {
    Decision replace =
        Dossiers.decision(
            Disposition.REPLACE, "exchange", "This build cannot be rebuilt.", List.of());
    String text =
        PdfText.of(
            documents.letter(
                dossier(Waves.weak(), Purpose.ARRIVAL, replace), folder("letter-replace")));
    assertTrue(text.contains("Yours remains yours until you agree"), text);
  }

  @Test
  void nothingIsWrittenAboutAUnitThatWasNotDecided() {
    Dossier open =
        new Dossier(
            Samples.core(TAG, "1"),
            1,
            List.of(),
            java.util.Optional.empty(),
            List.of(),
            java.util.Optional.empty(),
            List.of());
    assertThrows(Refusal.class, () -> documents.letter(open, folder));
    assertThrows(Refusal.class, () -> documents.traveller(open, folder));
  }

  @Test
  void theRebuildSheetNamesTheReadingsAndIsScanned() throws Exception {
    Path file =
        documents.traveller(
            dossier(Waves.weak(), Purpose.ARRIVAL, Dossiers.rebuild()), folder("traveller"));
    String text = PdfText.of(file);
    assertTrue(text.contains("Output, mean, 2.00 A: 43.6 ± 0.3 V"), text);
    assertTrue(text.contains("Parts kit: kit-A2"), text);
    assertEquals(TAG, SymbolReader.read(file, BarcodeFormat.QR_CODE, 200));
    last(file);
    Dossier back = dossier(Waves.good(), Purpose.ARRIVAL, Dossiers.giveBack());
    assertThrows(Refusal.class, () -> documents.traveller(back, folder));
  }

  @Test
  void theInstallSheetHasEveryStepThatSavesAUnit() throws Exception {
    Path file = documents.installSheet(rebuilt(Source.BENCH), folder("install"));
    String text = PdfText.of(file);
    for (String said :
        List.of(
            "Key off",
            "Battery disconnected",
            "Grommets",
            "seals",
            "tugged",
            "0.2 V or less",
            "programmed")) {
      assertTrue(text.contains(said), said + " in " + text);
    }
    last(file);
  }

  @Test
  void theHiddenMarkStaysInTheShop() throws Exception {
    Path file = documents.markSheet(rebuilt(Source.BENCH), folder("mark"));
    assertTrue(PdfText.of(file).contains("no customer sees it"));
    last(file);
  }

  @ParameterizedTest
  @EnumSource(Label.class)
  void everySizeIsFoundByItsName(Label label) {
    assertEquals(label, Label.of(label.size()));
    assertThrows(Refusal.class, () -> Label.of(label.size() + "0"));
  }

  @Test
  void letterPaperKeepsTheMeasure() throws Exception {
    Path file =
        documents(Locale.US)
            .testReport(
                dossier(Waves.weak(), Purpose.ARRIVAL, Dossiers.rebuild()), folder("us-letter"));
    try (var document = org.apache.pdfbox.Loader.loadPDF(file.toFile())) {
      // 8.5 by 11 inches of 72 points
      assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.5);
      assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.5);
    }
    last(file);
  }

  private static void last(Path file) throws Exception {
    assertEquals(1, PdfText.pages(file));
    assertEquals(List.of(), Lasting.faults(file));
  }

  private Documents documents(Locale region) {
    Shop s = TestReportTest.SHOP;
    Shop shop =
        new Shop(s.name(), s.address(), s.contact(), s.complaints(), 12, "Parts.", region, false);
    return new Documents(shop, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
  }

  private Dossier untested() {
    return Dossiers.of(List.of(), Samples.pending(), List.of());
  }

  private Dossier dossier(Capture capture, Purpose purpose, Decision decision) {
    RunRecord run = runs.run("a", TAG, capture, purpose, Source.BENCH);
    return Dossiers.of(List.of(run), decision, List.of());
  }

  private Dossier rebuilt(Source source) {
    RunRecord left = runs.run("b", TAG, Waves.good(), Purpose.SHIP, source);
    return Dossiers.of(List.of(left), Dossiers.rebuild(), DONE);
  }

  /** Kept as pictures where a property names a folder for them. */
  private Path folder(String kind) {
    String kept = System.getProperty("corewright.pictures");
    return kept == null ? folder : Path.of(kept, kind);
  }
}
