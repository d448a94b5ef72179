package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Paper about a unit whose record was imported: what its record supports, and what it does not. */
class PaperCommandsTest {
  private static final String ANSWERS =
      """
      {"who": "A. Tester",
       "received": {"family": "ref48", "serial": "R-77", "label": "REF", "customer": "Nobody"},
       "cues": {}, "checklist": {}, "agreed": {"approval": "approved"}}
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void aFailingUnit() throws Exception {
    Path answers = Files.writeString(folder.resolve("answers.json"), ANSWERS);
    Path record =
        Path.of(System.getProperty("corewright.home"), "fixtures", "captures", "ilim_low_avg");
    String file = record.resolve("capture.csv.gz").toString();
    assertEquals(0, run("measure", file, "--tag=T-1", "--answers=" + answers), err.toString());
  }

  @Test
  void eachPaperThatTheRecordSupportsIsWrittenAndKeptInTheLedger() throws Exception {
    for (String[] command :
        new String[][] {
          {"letter", "T-1"},
          {"label", "T-1", "--size=62x29"},
          {"sheet", "T-1", "--for=rebuild"},
          {"sheet", "T-1", "--for=fitting"},
          {"sheet", "T-1", "--for=mark"}
        }) {
      assertEquals(0, run(command), err.toString());
      assertTrue(Files.size(Path.of(out.toString().strip())) > 5_000, out.toString());
    }
    assertEquals(0, run("letter", "T-1", "--json"));
    assertEquals("letter", new ObjectMapper().readTree(out.toString()).get("kind").asText());
  }

  @Test
  void whatTheRecordDoesNotSupportIsRefusedWithWhatToDo() {
    assertEquals(1, run("warranty", "T-1"));
    assertTrue(
        err.toString().contains("was not rebuilt on this visit. Write down"), err.toString());
    assertEquals(1, run("label", "T-1", "--leaving"));
    assertEquals(1, run("label", "T-1", "--size=1x1"));
    assertTrue(err.toString().contains("Choose one of 50x25, 62x29, 100x50, 100x150"));
    assertEquals(1, run("letter", "T-2"));
    assertEquals(2, run("sheet", "T-1", "--for=nothing"));
  }

  @Test
  void whatTheTypeLacksIsSaidBeforeThePaperIsWritten() throws Exception {
    Files.writeString(
        folder.resolve("shop/shop.json"), "{\"name\": \"京 Rebuild\", \"address\": \"Street 1\"}");
    assertEquals(0, run("letter", "T-1", "--json"), err.toString());
    String said = "has no 京 (U+4EAC), which stands in the shop's own words (shop.json).";
    assertTrue(err.toString().contains(said), err.toString());
    assertTrue(
        new ObjectMapper().readTree(out.toString()).at("/cautions/0").asText().contains(said));
  }

  private int run(String... arguments) {
    out.getBuffer().setLength(0);
    String[] all = java.util.Arrays.copyOf(arguments, arguments.length + 1);
    all[arguments.length] = "--shop=" + folder.resolve("shop");
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(all);
  }
}
