package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody finds who has page one of a certificate and another's reader, and nothing else. */
class ReaderTest {
  @TempDir private Path folder;

  /** The questions of a customer, in the order in which the page answers them. */
  @Test
  void pageOneAnswersInTheOrderInWhichItIsRead() throws Exception {
    String page = pageOne();
    int at = 0;
    for (String answer :
        List.of(
            "Test certificate U-00418Q-S1", // which paper
            "Mill Yard Rebuild", // whose
            "26 November 2026",
            "U-00418", // which unit
            "Orrel Plant Hire", // whose
            "SN 0698-114",
            "PASS", // is it good
            "the output stayed at 47.59 ± 0.09 V",
            "The limit is 46.50 V.", // held against what
            "It arrived at 43.6 ± 0.3 V.", // and before
            "± holds in 95 of 100 cases", // how sure
            "Judged at", // at which temperature
            "23 ± 5 °C",
            "Output capacitors C1 to C4", // what was done
            "until 26 November 2027", // covered until
            "Load dump, jump start", // what was not tested
            "Stored charge", // what can hurt
            "Code R8K3S-5VT75", // is it genuine
            "Not an accredited laboratory")) { // what is not claimed
      int found = page.indexOf(answer, at);
      assertTrue(found >= at, "'" + answer + "' after character " + at + " of:\n" + page);
      at = found;
    }
  }

  /**
   * A sentence of at most 25 words is read at once, and 15 to 20 in the mean: rules of plain
   * writing, from memory. The foot is for experts and the safety text is fixed.
   */
  @Test
  void aCustomersSentencesAreShort() throws Exception {
    String page = pageOne();
    String told = page.substring(page.indexOf("With the input"), page.indexOf("before it left us"));
    String[] sentences = told.split("(?<=[a-zA-Z])\\. ");
    assertTrue(sentences.length >= 3, told);
    for (String sentence : sentences) {
      int words = sentence.strip().split("\\s+").length;
      assertTrue(words <= 25, words + " words: " + sentence);
    }
    String letter = text(new Nine(TestReportTest.SHOP).write(folder).get("letter"));
    String body = letter.substring(letter.indexOf("We received"), letter.indexOf("Not tested"));
    double mean =
        Arrays.stream(body.split("(?<=[a-zA-ZV])\\. "))
            .mapToInt(s -> s.strip().split("\\s+").length)
            .average()
            .orElseThrow();
    assertTrue(mean <= 20, "words in a sentence of the letter: " + mean);
  }

  private String pageOne() throws Exception {
    Nine nine = new Nine(TestReportTest.SHOP);
    return text(nine.documents().certificate(nine.rebuilt(), folder));
  }

  private String text(Path pdf) throws Exception {
    if (!Files.isExecutable(Path.of("/usr/bin/pdftotext"))) {
      if ("true".equals(System.getenv("CI"))) {
        fail("pdftotext is missing: .ci/run installs it");
      }
      assumeTrue(false, "pdftotext is not installed (Debian: poppler-utils)");
    }
    Path text = folder.resolve("page.txt");
    int left =
        new ProcessBuilder("pdftotext", "-l", "1", pdf.toString(), text.toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor();
    assertEquals(0, left);
    return Normalizer.normalize(Files.readString(text), Normalizer.Form.NFKC)
        .replaceAll("\\s+", " ");
  }
}
