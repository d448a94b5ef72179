package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.files.BadFile;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import corewright.reports.document.template.TemplateKind;
import corewright.reports.document.template.TemplateReader;
import corewright.reports.document.template.Templates;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a shop may change in a document, and what it may not. */
class TemplateTest {
  private static final String LETTER =
      """
      # Ours since March.
      template letter

      [head]
      [unit]

      [received]
      Dear {customer}, your unit {unit}
      came to us on {received}.

      [finding]
      [decision]
      Call {shop} if you have questions.
      [text REBUILD]
      It is ready in about two weeks.
      [text REPLACE]
      An exchange unit lies here for you.
      [cautions]
      Keep it dry until then.
      [foot]
      """;

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(TemplateKind.class)
  void whatShipsIsATemplateAndNothingRequiredCanBeTakenOut(TemplateKind kind) {
    String shipped = kind.text();
    List<String> names =
        TemplateReader.read("x", shipped).sections().stream().map(s -> s.name()).toList();
    assertTrue(TemplateReader.isOne(shipped));
    for (String name : names) {
      String without = shipped.replace("[" + name + "]\n", "");
      if (name.equals("sign")) {
        TemplateReader.read("x", without);
      } else {
        String said = mistakes(without).get(0);
        assertEquals(
            "x:1: [" + name + "]: this section is missing and may never be left out. Write it back",
            said);
      }
    }
    // ISO/IEC 17025, 7.8: results, what they hold for and what is not claimed stand in every
    // report.
    assertTrue(names.contains("foot"), kind.id());
    assertTrue(names.contains("cautions") || kind == TemplateKind.INSTALL_SHEET, kind.id());
  }

  @Test
  void everyMistakeIsNamedWithItsLineAndWhatToDo() {
    String bad =
        LETTER
            .replace("your unit {unit}", "your unit {unti}")
            .replace("[text REPLACE]", "[text LATER]")
            .replace("Keep it dry until then.", "A lifetime of } service.")
            .replace("[unit]\n", "[unit]\nNumber above.\n")
            .replace("[foot]", "[feet]");
    List<String> said = mistakes(bad);
    String all = String.join("\n", said);
    assertTrue(all.contains("x:9: {unti}: there is no such placeholder. There are unit, "), all);
    assertTrue(all.contains("x:5: [unit]: nothing may be written here: it holds what was"), all);
    assertTrue(all.contains("x:17: [text]: LATER is neither a verdict nor a disposition"), all);
    assertTrue(all.contains("x:20: lifetime: no document of a shop may say this. Say for"), all);
    assertTrue(all.contains("x:20: {: a brace stands alone. Braces hold a name"), all);
    assertTrue(all.contains("x:21: [feet]: a letter has no such section. It has text, "), all);
    assertTrue(all.contains("x:1: [foot]: this section is missing and may never be left"), all);
    assertEquals(7, said.size(), all);
  }

  @Test
  void aPageKeepsTheOrderInWhichACustomerReadsIt() {
    String late = TemplateKind.CERTIFICATE.text().replace("[verdict]\n", "");
    List<String> said = mistakes(late.replace("[foot]", "[verdict]\n[foot]"));
    assertTrue(String.join("\n", said).contains(": it stands too early. Their order is head,"));
    assertTrue(mistakes(LETTER + "[text]\nP.S.").get(0).contains("it stands outside the page"));
    assertTrue(mistakes(LETTER + "[foot]\n").get(0).contains("it stands here twice"));
    String long_ =
        TemplateKind.CERTIFICATE
            .text()
            .replace("[foot]", "[text]\n" + "ab ".repeat(200) + "\n[foot]");
    assertTrue(mistakes(long_).get(0).contains("there is room for 400"), mistakes(long_).get(0));
    assertTrue(mistakes("Dear customer").get(0).contains("does not name a document. Write: "));
  }

  @Test
  void theShopsWordsStandWhereItPutThemWithTheUnitsOwnNames() throws Exception {
    String text = PdfText.of(documents(LETTER).letter(dossier("{unit} <b>"), folder));
    assertTrue(
        text.contains(
            "Dear {unit} <b>, your unit U-00418Q came to us on 26 November 2026. You told us"),
        text);
    assertFalse(text.contains("We received unit"), text);
    assertTrue(text.contains("Call Mill Yard Rebuild if you have questions."), text);
    assertTrue(text.contains("It is ready in about two weeks."), text);
    assertFalse(text.contains("An exchange unit lies here"), text);
    assertTrue(text.contains("Keep it dry until then."), text);
    // What a customer is told is what was seen; what it earns the shop is not among it.
    assertTrue(text.contains("Build A2 is filled with soft gel."), text);
    assertFalse(text.contains("EUR"), text);
    assertTrue(text.contains("Load dump, jump start") && text.contains("Not an accredited"), text);
    assertFalse(text.contains("For Mill Yard Rebuild: ____"), text);
    assertEquals(1, PdfText.pages(folder.resolve("U-00418Q-visit-1-letter.pdf")));
    assertEquals(List.of(), Lasting.faults(folder.resolve("U-00418Q-visit-1-letter.pdf")));
  }

  @Test
  void aTemplateWithAMistakeMakesNoDocument() {
    Documents documents = documents(LETTER.replace("[cautions]\n", ""));
    BadFile bad = assertThrows(BadFile.class, () -> documents.letter(dossier("Orrel"), folder));
    assertTrue(bad.mistakes().get(0).toString().startsWith("templates/letter.txt:"));
    assertEquals(
        "templates/letter.txt: template: it is a template of a certificate. Rename it",
        assertThrows(
                BadFile.class,
                () -> documents(TemplateKind.CERTIFICATE.text()).letter(dossier("Orrel"), folder))
            .mistakes()
            .get(0)
            .toString());
  }

  private Documents documents(String letter) {
    return new Documents(TestReportTest.SHOP, runs, Clock.fixed(Samples.MORNING, ZoneOffset.UTC))
        .with(new Templates(Map.of("letter", letter)));
  }

  private final SampleRuns runs = new SampleRuns();

  private Dossier dossier(String customer) {
    RunRecord run = runs.run("a", "U-00418Q", Waves.weak(), Purpose.ARRIVAL, Source.BENCH);
    return Dossiers.of(
        Samples.coreOf(customer, "U-00418Q", "SN 1"), List.of(run), Dossiers.rebuild(), List.of());
  }

  private static List<String> mistakes(String text) {
    return assertThrows(BadFile.class, () -> TemplateReader.read("x", text)).mistakes().stream()
        .map(Object::toString)
        .toList();
  }
}
