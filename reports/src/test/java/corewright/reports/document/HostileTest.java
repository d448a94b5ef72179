package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.profiles.Profile.Purpose;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever stands in a field of a record, the page stays one page and says nothing else. */
class HostileTest {
  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();

  static List<String> texts() {
    return List.of(
        "<script>alert(1)</script><object type='application/x-drawing' data='PASS'/>",
        "=cmd|' /C calc'!A0 \u0000\u0007\u001b[31m\r\n",
        "\u202Egnp.exe \u2066left\u2069 \u200B\uFEFF\uDC00 half a pair",
        "W".repeat(10_000),
        "long words without end ".repeat(400),
        "{0} {1} ${env} %s &amp; &lt; ]]> <!-- --> </style>",
        "Ελένη Παπαδοπούλου, Иван Щербаков, Đặng Thị Hoa, 東京機械 🚜");
  }

  @ParameterizedTest
  @MethodSource("texts")
  void noFieldBreaksThePage(String text) throws Exception {
    Shop shop = new Shop("Ours " + text, text, text, text, 12, text, java.util.Locale.UK, false);
    Documents documents =
        new Documents(
            shop,
            runs,
            Clock.fixed(Samples.MORNING, ZoneOffset.UTC),
            new TestRecord("bench-1:1042:9f86d081884c7d65"),
            Optional.empty());
    RunRecord left = runs.run("b", "U-00418Q", Waves.good(), Purpose.SHIP, Source.BENCH);
    Path report =
        documents.testReport(dossier(text, List.of(left)), out("hostile-" + texts().indexOf(text)));
    Path warranty =
        documents.warrantyReport(
            dossier(text, List.of(left)), out("hostile-" + texts().indexOf(text)));
    for (Path file : List.of(report, warranty)) {
      assertEquals(1, PdfText.pages(file), text);
      assertEquals(List.of(), Lasting.faults(file));
      assertTrue(PdfText.of(file).contains("the output stayed at 47.59 ± 0.09 V"));
      assertEquals("", acting(PdfText.of(file)));
    }
  }

  @Test
  void noFieldBreaksAnyOtherPaper() throws Exception {
    String text = texts().get(0) + texts().get(1) + texts().get(2) + "W".repeat(10_000);
    Shop shop = new Shop("Ours " + text, text, text, text, 12, text, java.util.Locale.UK, false);
    Documents documents = new Documents(shop, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    RunRecord left = runs.run("b", "U-00418Q", Waves.good(), Purpose.SHIP, Source.BENCH);
    RunRecord back = runs.run("c", "U-00418Q", Waves.weak(), Purpose.CLAIM, Source.BENCH);
    Dossier dossier = dossier(text, List.of(left));
    Path out = out("hostile-all");
    for (Path file :
        List.of(
            documents.letter(dossier, out),
            documents.installSheet(dossier, out),
            documents.markSheet(dossier, out),
            documents.traveller(rebuilding(dossier), out),
            documents.coreTag(dossier, Label.TALL, out),
            documents.unitLabel(dossier, Label.WIDE, out),
            documents.claimReport(claim(text, dossier(text, List.of(back)), left, back), out))) {
      assertEquals(1, PdfText.pages(file), file.toString());
      assertEquals(List.of(), Lasting.faults(file), file.toString());
      assertEquals("", acting(PdfText.of(file)), file.toString());
    }
  }

  private static Dossier rebuilding(Dossier d) {
    return new Dossier(
        d.core(),
        d.visit(),
        d.answers(),
        d.identification(),
        d.runs(),
        Optional.of(corewright.reports.Dossiers.rebuild()),
        d.rebuild());
  }

  private static ClaimCase claim(String text, Dossier now, RunRecord left, RunRecord back) {
    List<String> evidence = java.util.Collections.nCopies(20, text);
    return new ClaimCase(
        now,
        1,
        text,
        text,
        Optional.of(back),
        left,
        Optional.of(back),
        Optional.of(corewright.bench.life.ClaimClass.W3),
        Optional.of(corewright.bench.life.ClaimClass.W3.usual()),
        text,
        evidence,
        text);
  }

  @Test
  void namesInLatinGreekAndCyrillicArePrintedAndWhatTheTypeLacksIsSaid() throws Exception {
    Dossier dossier = dossier(texts().get(6), List.of());
    Documents documents =
        new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    String text = PdfText.of(documents.testReport(dossier, folder));
    assertTrue(text.contains("Ελένη Παπαδοπούλου, Иван Щербаков, Đặng Thị Hoa, ???? ?"), text);
    assertTrue(text.contains("cannot print stand as a question mark"), text);
  }

  @Test
  void whatTheTypeLacksIsSaidFieldByFieldBeforeAnythingIsPrinted() {
    Documents documents =
        new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    List<String> said = documents.lacking(dossier(texts().get(6), List.of()));
    assertEquals(
        "The type of the documents has no 東 (U+6771), 京 (U+4EAC), 機 (U+6A5F), 械 (U+68B0),"
            + " \uD83D\uDE9C (U+1F69C), which stands in the customer's name. It would print as a"
            + " question mark: write it in Latin, Greek or Cyrillic letters.",
        said.get(0));
    assertEquals(6, said.size(), said.toString());
    String names = "Ελένη Παπαδοπούλου, Иван Щербаков, Ґалина Їжак, Łukasz Żółć, Đặng Thị Hoa";
    assertEquals(List.of(), documents.lacking(dossier(names, List.of())));
    assertEquals(List.of(), documents.lacking(dossier("cafe\u0301 \u202Ex", List.of())));
  }

  /** Unicode Standard Annex 15: e and its accent are the letter é. */
  @Test
  void aLetterTypedInTwoPartsIsSetAsOne() throws Exception {
    Documents documents =
        new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    Path file = documents.testReport(dossier("Rene\u0301 Kova\u0301cs", List.of()), folder);
    assertTrue(PdfText.of(file).contains("René Kovács"), PdfText.of(file));
  }

  /** Characters that act on their neighbours, as hexadecimal numbers. */
  private static String acting(String text) {
    return text.codePoints()
        .filter(c -> Character.getType(c) == Character.FORMAT || Character.isISOControl(c))
        .mapToObj(Integer::toHexString)
        .collect(java.util.stream.Collectors.joining(" "));
  }

  private static Dossier dossier(String text, List<RunRecord> runs) {
    Core core = new Core("U-00418Q", text, text, text, text, "repair", text, Samples.MORNING, text);
    Identification build =
        new Identification(
            text,
            1,
            text,
            0.6,
            Identification.Band.UNCERTAIN,
            text,
            0.3,
            Map.of(text, 0.6),
            List.of(text, text, text),
            text);
    Decision decision =
        new Decision(
            text,
            1,
            Disposition.PENDING,
            text,
            text,
            List.of(text, text, text, text),
            text,
            Optional.of(suspected(text)),
            text,
            text,
            Optional.of(LocalDate.of(2026, 11, 30)),
            Map.of());
    return new Dossier(
        core,
        1,
        List.of(),
        Optional.of(build),
        runs,
        Optional.of(decision),
        List.of(text, text, text, text, text, text, text, text, text));
  }

  private Path out(String kind) {
    String kept = System.getProperty("corewright.pictures");
    return kept == null ? folder : Path.of(kept, kind);
  }

  private static Diagnosis suspected(String text) {
    return new Diagnosis(
        List.of(new Diagnosis.Candidate(text, text, 0.9, List.of(text), List.of(text), text)),
        true,
        List.of(text));
  }
}
