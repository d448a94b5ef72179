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
    Shop shop = new Shop(text, text, text, text, 12, text, java.util.Locale.UK, false);
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
  void namesInLatinGreekAndCyrillicArePrintedAndWhatTheTypeLacksIsSaid() throws Exception {
    Dossier dossier = dossier(texts().get(6), List.of());
    Documents documents =
        new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    String text = PdfText.of(documents.testReport(dossier, folder));
    assertTrue(text.contains("Ελένη Παπαδοπούλου, Иван Щербаков, Đặng Thị Hoa, ???? ?"), text);
    assertTrue(text.contains("cannot print stand as a question mark"), text);
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
