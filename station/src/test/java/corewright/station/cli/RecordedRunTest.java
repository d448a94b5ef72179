package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A file of another instrument, taken as a unit's run: verdict, disposition, record, document. */
class RecordedRunTest {
  private static final String ANSWERS =
      """
      {"who": "A. Tester",
       "received": {"family": "ref48", "serial": "R-77", "label": "REF", "customer": "Nobody"},
       "cues": {}, "checklist": {}, "agreed": {"approval": "approved"}}
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void endsWithVerdictDispositionRecordAndDocument() throws Exception {
    Path answers = Files.writeString(folder.resolve("answers.json"), ANSWERS);
    Path record =
        Path.of(System.getProperty("corewright.home"), "fixtures", "captures", "ilim_low_avg");
    int code =
        run(
            "measure",
            record.resolve("capture.csv.gz").toString(),
            "--tag=T-1",
            "--answers=" + answers,
            "--shop=" + folder.resolve("shop"),
            "--json");
    assertEquals(0, code, err.toString());
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("FAIL", json.at("/run/verdict").asText());
    assertEquals("imported file", json.at("/run/source").asText());
    assertEquals("REBUILD", json.at("/decision/disposition").asText());
    assertTrue(json.at("/run/reasons/0").asText().contains("43.28"), out.toString());
    assertTrue(Files.isRegularFile(Path.of(json.get("document").asText())));

    out.getBuffer().setLength(0);
    assertEquals(0, run("show", "R-77", "--shop=" + folder.resolve("shop")));
    assertTrue(out.toString().contains("imported file: FAIL"), out.toString());
  }

  @Test
  void anUnknownAnswerIsRefusedWithItsLineAndNothingIsReceived() throws Exception {
    Path answers =
        Files.writeString(
            folder.resolve("answers.json"),
            ANSWERS.replace("\"cues\": {}", "\"cues\": {\"x\": \"y\"}"));
    int code =
        run("measure", "none.csv", "--answers=" + answers, "--shop=" + folder.resolve("shop"));
    assertEquals(1, code);
    assertTrue(err.toString().contains("answers.json:3"), err.toString());
  }

  private int run(String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(arguments);
  }
}
