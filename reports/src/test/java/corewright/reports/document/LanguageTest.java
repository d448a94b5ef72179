package corewright.reports.document;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.reports.NoLanguage;
import corewright.reports.SampleFamily;
import corewright.reports.chart.Numerals;
import corewright.reports.document.genuine.Attachment;
import corewright.reports.ledger.Json;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose language and whose decimal mark the documents speak. */
class LanguageTest {
  /** A number with a point that nobody would read as a revision, a reference or an address. */
  private static final Pattern POINTED = Pattern.compile("[0-9]+\\.[0-9]+(?= (?:±|V|A|J|s)\\b| ±)");

  @TempDir Path folder;

  @Test
  void everyLetterOnAPageComesFromTheBundleOrFromTheRecord() throws Exception {
    Nine nine = new Nine(shop(NoLanguage.REGION));
    List<Pattern> known = known(nine);
    Map<String, Path> files = nine.write(folder);
    files.put("test-report", nine.documents().testReport(nine.voided(), folder));
    for (Map.Entry<String, Path> file : files.entrySet()) {
      String text = PdfText.of(file.getValue());
      for (Pattern from : known) {
        text = from.matcher(text).replaceAll(" ");
      }
      assertEquals("", String.join(" ", latin(text)), file.getKey());
      assertTrue(text.codePoints().anyMatch(c -> c >= 'а' && c <= 'я'), file.getKey());
    }
  }

  @Test
  void theRegionSetsTheDecimalMarkOfEveryMeasuredNumber() throws Exception {
    Map<String, Path> files = new Nine(shop(new Locale("en", "DE"))).write(folder);
    String certificate = PdfText.of(files.get("certificate"));
    assertTrue(certificate.contains("the output stayed at 47,59 ± 0,09 V"), certificate);
    assertTrue(certificate.contains("The limit is 46,50 V"), certificate);
    assertTrue(PdfText.of(files.get("letter")).contains("down at"));
    for (Map.Entry<String, Path> file : files.entrySet()) {
      Matcher pointed = POINTED.matcher(PdfText.of(file.getValue()));
      assertTrue(!pointed.find(), () -> file.getKey() + ": " + pointed.group());
    }
    String curves = curves(files.get("certificate"));
    assertTrue(curves.lines().skip(1).allMatch(line -> line.matches("[-0-9.,]+")), curves);
    assertEquals(
        curves.lines().findFirst().orElseThrow().split(",").length,
        curves.lines().skip(1).findFirst().orElseThrow().split(",").length);
  }

  /** Unicode CLDR: which regions write a comma, though their documents are in English. */
  @Test
  void theMarkIsThatOfTheRegion() {
    for (String country : List.of("DE", "AT", "FR", "PL", "SE", "BR", "IT", "ES")) {
      assertEquals(',', Numerals.of(new Locale("en", country)).mark(), country);
    }
    for (String country : List.of("GB", "US", "IE", "AU", "CH", "JP", "MX", "CN")) {
      assertEquals('.', Numerals.of(new Locale("en", country)).mark(), country);
    }
  }

  @Test
  void aKeptSentenceChangesItsNumbersAndNothingElse() {
    Numerals comma = new Numerals(',');
    assertEquals(
        "The output fell to 43,12 ± 0,10 V under 2,00 A at −20,5 °C.",
        comma.sentence("The output fell to 43.12 ± 0.10 V under 2.00 A at −20.5 °C."));
    for (String same :
        List.of("corewright-1.0.0", "ISO 17025:2017, 7.8.2.1", "a.1", "lot-7.2", "v1.2"))
      assertEquals(same, comma.sentence(same));
    assertEquals("1.5 V", new Numerals('.').sentence("1.5 V"));
  }

  private static Shop shop(Locale region) {
    Shop s = TestReportTest.SHOP;
    return new Shop(
        s.name(), s.address(), s.contact(), s.complaints(), 12, s.warrantyTerms(), region, false);
  }

  private static String curves(Path certificate) throws Exception {
    try (PDDocument document = Loader.loadPDF(certificate.toFile())) {
      PDEmbeddedFilesNameTreeNode files =
          new PDDocumentNameDictionary(document.getDocumentCatalog()).getEmbeddedFiles();
      return new String(
          files.getNames().get(Attachment.CURVES).getEmbeddedFile().toByteArray(), UTF_8);
    }
  }

  /** Every string of the record, the shop and the family, as words; the longest first. */
  private static List<Pattern> known(Nine nine) throws Exception {
    TreeSet<String> known =
        new TreeSet<>(Comparator.comparing(String::length).reversed().thenComparing(s -> s));
    ObjectMapper mapper = new ObjectMapper();
    List<Object> parts = new ArrayList<>(nine.dossiers());
    parts.add(SampleFamily.family());
    parts.add(shop(Locale.UK));
    parts.add(List.of("photo 3f2a: channel 3 burnt", "seal 0417 intact", "dies when hot"));
    for (Object part : parts) {
      leaves(mapper.readTree(Json.text(part)), known);
    }
    known.addAll(List.of("26 November 2027", "U-00418 Q", "C51", "W3", Nine.RECORD.head()));
    return known.stream()
        .map(s -> Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(s) + "(?![\\p{L}\\p{N}])"))
        .toList();
  }

  private static void leaves(JsonNode node, TreeSet<String> into) {
    if (node.isTextual() && !node.asText().isBlank()) {
      into.add(node.asText().replaceAll("[\\s\u00A0]+", " ").strip());
    }
    node.forEach(child -> leaves(child, into));
  }

  /**
   * Words with a Latin letter that are no unit, number, code, hash or month of Java's own calendar.
   */
  private static List<String> latin(String text) {
    List<String> found = new ArrayList<>();
    Matcher word = Pattern.compile("[0-9]*[A-Za-z][A-Za-z0-9/-]*").matcher(text);
    while (word.find()) {
      if (!word.group()
          .matches(
              "V|mV|A|s|ms|F|Hz|kHz|J|W|C|K|V/min|[0-9a-f]{8}|s[0-9]+|S1|HO|Nov|[0-9A-Z]{5}-[0-9A-Z]{5}")) {
        found.add(word.group());
      }
    }
    return found;
  }
}
