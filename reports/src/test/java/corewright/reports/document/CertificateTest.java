package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import corewright.bench.record.Dossier;
import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.measures.Capture;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import corewright.reports.chart.Digits;
import corewright.reports.chart.Numerals;
import corewright.reports.document.genuine.Genuine;
import corewright.reports.document.genuine.PdfCheck;
import corewright.reports.document.genuine.TestKey;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CertificateTest {
  private static final String TAG = "U-00418Q";
  private static final List<String> DONE = List.of("Output capacitors C1 to C4, lot 2644-K");

  @TempDir Path folder;
  private static final LocalDate TESTED_ON = LocalDate.ofInstant(Samples.MORNING, ZoneOffset.UTC);

  private final SampleRuns runs = new SampleRuns();
  private final TestKey key = new TestKey();

  /**
   * With as much equipment as would leave a last page of two lines, were its end not kept whole.
   */
  @Test
  void holdsEveryNumberOfTheRunAndLasts() throws Exception {
    runs.equipped(12);
    Dossier dossier = rebuilt(Source.BENCH);
    Documents documents = documents(Duration.ZERO);
    Answered.Signature owner = new Answered.Signature("H. Oduya", Samples.MORNING);
    List<Answered> answered =
        List.of(
            new Answered("family sd48", Optional.empty(), true),
            new Answered("profile sd48-ship", Optional.of(owner), false),
            new Answered("profile sd48-odd", Optional.empty(), false));
    Path file =
        documents
            .as(documents.now().answeredBy(answered))
            .certificate(dossier, folder("certificate"));
    String text = PdfText.of(file);
    for (String said :
        List.of(
            "The limits of family sd48 are as delivered with the program; nobody of this shop has"
                + " signed them.",
            "The limits of profile sd48-ship were signed by H. Oduya on 26 November 2026.",
            "Nobody has signed the limits of profile sd48-odd.")) {
      assertTrue(text.contains(said), said + " in " + text);
    }
    RunRecord run = dossier.runs().get(1);
    for (Finding finding : run.judgement().findings()) {
      Digits digits = Digits.of(finding.limit(), Numerals.of(Locale.UK));
      var m = finding.measurement().orElseThrow();
      assertTrue(text.contains(digits.value(m)), finding + " in " + text);
    }
    run.measured()
        .orElseThrow()
        .holds()
        .forEach(
            hold ->
                hold.readings()
                    .values()
                    .forEach(
                        reading ->
                            reading
                                .measurement()
                                .ifPresent(
                                    m ->
                                        assertTrue(
                                            text.contains(shown(m)), shown(m) + " in " + text))));
    assertTrue(text.contains("Test certificate U-00418Q-S1"), text);
    assertTrue(text.contains("run 1 of 1 of its kind"), text);
    assertTrue(text.contains("P(conforms)") && text.contains("over 0.999"), text);
    assertTrue(text.contains("End of certificate U-00418Q-S1"), text);
    assertTrue(PdfText.pages(file) >= 2);
    assertTrue(text.contains("U-00418Q-S1, 2 / " + PdfText.pages(file)), text);
    assertEquals(List.of(), Lasting.faults(file));
    String last = PdfText.last(file);
    assertTrue(last.contains("How it was done") && last.contains("End of certificate"), last);
  }

  @Test
  void itsCodeIsReadByAScannerAndIsThatOfTheRecordInside() throws Exception {
    Path file = documents(Duration.ZERO).certificate(rebuilt(Source.BENCH), folder);
    Genuine genuine = PdfCheck.check(Files.readAllBytes(file), Optional.of(key.publicKey()));
    assertEquals(List.of(), genuine.faults());
    assertTrue(genuine.whole());
    assertEquals("Mill Yard Rebuild", genuine.holder());
    assertEquals(
        "U-00418Q-S1 " + genuine.code(), SymbolReader.read(file, BarcodeFormat.QR_CODE, 200));
    assertTrue(genuine.record().orElseThrow().contains("SN 0698-114"));
  }

  @Test
  void whoeverSignedItWithAnotherKeyIsFound() throws Exception {
    Path file = documents(Duration.ZERO).certificate(rebuilt(Source.BENCH), folder);
    Genuine genuine =
        PdfCheck.check(Files.readAllBytes(file), Optional.of(new TestKey().publicKey()));
    assertFalse(genuine.whole());
    assertEquals("It is not signed with the key that was given.", genuine.faults().get(0));
  }

  @Test
  void oneByteChangedAnywhereIsFound() throws Exception {
    byte[] pdf =
        Files.readAllBytes(documents(Duration.ZERO).certificate(rebuilt(Source.BENCH), folder));
    String seen = new String(pdf, StandardCharsets.ISO_8859_1);
    int gap = seen.lastIndexOf("/Contents <") + "/Contents <".length() - 1;
    Random random = new Random(20261125);
    for (int i = 0; i < 25; i++) {
      found(pdf, random.nextInt(pdf.length), random);
      found(pdf, gap + random.nextInt(2_000), random);
    }
    found(pdf, pdf.length - 1, random);
    byte[] longer = java.util.Arrays.copyOf(pdf, pdf.length + 1);
    longer[pdf.length] = '\n';
    assertFalse(whole(longer), "a byte behind the end");
  }

  private void found(byte[] pdf, int at, Random random) {
    byte[] changed = pdf.clone();
    changed[at] ^= (byte) (1 + random.nextInt(255));
    assertFalse(whole(changed), "byte " + at + " was " + pdf[at] + " and is " + changed[at]);
  }

  private boolean whole(byte[] pdf) {
    return PdfCheck.check(pdf, Optional.of(key.publicKey())).whole();
  }

  @Test
  void aPageWrittenOverTellsWhichWordsWereChanged() throws Exception {
    Path file = documents(Duration.ZERO).certificate(rebuilt(Source.BENCH), folder);
    Path forged = folder.resolve("forged.pdf");
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      PDPage last = document.getPage(document.getNumberOfPages() - 1);
      try (PDPageContentStream over =
          new PDPageContentStream(document, last, PDPageContentStream.AppendMode.APPEND, true)) {
        over.beginText();
        over.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 9);
        over.newLineAtOffset(60, 40);
        over.showText("Warranty extended to 2099");
        over.endText();
      }
      document.save(forged.toFile());
    }
    Genuine genuine = PdfCheck.check(Files.readAllBytes(forged), Optional.of(key.publicKey()));
    assertFalse(genuine.whole());
    String faults = String.join("\n", genuine.faults());
    assertTrue(faults.contains("the page says 'Warranty extended to 2099"), faults);
  }

  @Test
  void yearsLaterTheRecordGivesTheSamePages() throws Exception {
    Dossier dossier = rebuilt(Source.BENCH);
    Path now = documents(Duration.ZERO).certificate(dossier, folder.resolve("now"));
    Path later =
        documents(Duration.ofDays(3000))
            .as(documents(Duration.ZERO).now())
            .certificate(dossier, folder.resolve("later"));
    String first = PdfText.of(now);
    String again = PdfText.of(later);
    String issued = "26 November 2026, copy in full only";
    assertTrue(first.contains(issued), first);
    assertEquals(first, again);
  }

  @Test
  void anEmulatedRunMakesASpecimenThatNobodySigned() throws Exception {
    Path file = documents(Duration.ZERO).certificate(rebuilt(Source.EMULATED), folder);
    String text = PdfText.of(file);
    assertTrue(text.contains("Specimen of a test certificate") && text.contains("SPECIMEN"), text);
    assertFalse(text.contains("Code "), text);
    assertEquals(
        List.of("It carries no signature."),
        PdfCheck.check(Files.readAllBytes(file), Optional.empty()).faults());
    assertEquals(List.of(), Lasting.faults(file));
  }

  @Test
  void whatTheRecordDoesNotSupportIsRefused() {
    assertEquals(
        "Unit U-00418Q was not tested. Test it first",
        refused(Dossiers.of(List.of(), Samples.pending(), List.of())));
    assertTrue(refused(tested(Waves.sagging(), Source.BENCH)).contains("came to VOID"));
    assertTrue(refused(tested(Waves.good(), Source.IMPORTED)).contains("not measured on a bench"));
    assertTrue(refused(rebuilt(Source.IMPORTED)).contains("not measured on a bench"));
    assertTrue(refused(rebuilt(Source.BY_HAND)).contains("not measured on a bench"));
    RunRecord arrived = runs.run("a", TAG, Waves.good(), Purpose.ARRIVAL, Source.BENCH);
    assertTrue(
        refused(Dossiers.of(List.of(arrived), Dossiers.rebuild(), DONE))
            .contains("not a test before shipping"));
  }

  /** ISO/IEC 17025, 6.4: from memory; what is out of date proves nothing. */
  @Test
  void aCertificateIsRefusedFromTheDayAfterACalibrationWasDue() {
    runs.calibrated("K-114, due " + TESTED_ON);
    assertTrue(Files.exists(documents(Duration.ZERO).certificate(rebuilt(Source.BENCH), folder)));
    runs.calibrated("K-114, due " + TESTED_ON.minusDays(1));
    assertTrue(
        refused(rebuilt(Source.BENCH))
            .contains("The calibration of the digitizer was overdue when the unit was tested"));
    Clock tenTheEveningBefore = Clock.fixed(Samples.MORNING, ZoneId.of("Pacific/Honolulu"));
    assertTrue(
        Files.exists(
            documents(tenTheEveningBefore).certificate(rebuilt(Source.BENCH), folder("there"))));
  }

  /** As {@link Digits} writes a reading of its own size, without the ties that hold it together. */
  private static String shown(Measurement m) {
    if (m.unit() == Unit.ONE && m.u() == 0) {
      return Figures.number(m.value(), 0);
    }
    Digits digits = Digits.of(m.unit(), Math.abs(m.value()), Numerals.of(Locale.UK));
    return (digits.value(m) + " " + digits.u(m)).replace('\u00A0', ' ');
  }

  private String refused(Dossier dossier) {
    return assertThrows(Refusal.class, () -> documents(Duration.ZERO).certificate(dossier, folder))
        .getMessage();
  }

  private Documents documents(Duration later) {
    return documents(Clock.fixed(Samples.MORNING.plus(later), ZoneOffset.UTC));
  }

  private Documents documents(Clock clock) {
    return new Documents(TestReportTest.SHOP, runs, clock, new TestRecord(""), Optional.of(key));
  }

  private Dossier tested(Capture capture, Source source) {
    RunRecord run = runs.run("a", TAG, capture, Purpose.ARRIVAL, source);
    return Dossiers.of(List.of(run), Dossiers.giveBack(), List.of());
  }

  private Dossier rebuilt(Source source) {
    RunRecord arrived = runs.run("a", TAG, Waves.weak(), Purpose.ARRIVAL, source);
    RunRecord left = runs.run("b", TAG, Waves.good(), Purpose.SHIP, source);
    return Dossiers.of(List.of(arrived, left), Dossiers.rebuild(), DONE);
  }

  private Path folder(String kind) {
    String kept = System.getProperty("corewright.pictures");
    return kept == null ? folder : Path.of(kept, kind);
  }
}
