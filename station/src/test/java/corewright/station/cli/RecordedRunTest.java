package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A file of another instrument, taken as a unit's run: verdict, disposition, record, document. */
class RecordedRunTest extends Commands {
  @Test
  void endsWithVerdictDispositionRecordAndDocument() throws Exception {
    int code =
        run(
            "measure",
            recorded("ilim_low_avg"),
            "--tag=T-1",
            "--answers=" + answers(ANSWERS),
            "--shop=" + folder.resolve("shop"),
            "--json");
    assertEquals(0, code, err.toString());
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("FAIL", json.at("/run/verdict").asText());
    assertEquals("imported file", json.at("/run/source").asText());
    assertEquals("REBUILD", json.at("/decision/disposition").asText());
    assertTrue(json.at("/run/reasons/0").asText().contains("43.28"), out.toString());
    assertTrue(Files.isRegularFile(Path.of(json.get("document").asText())));

    assertEquals(0, run("show", "R-77", "--shop=" + folder.resolve("shop")));
    assertTrue(out.toString().contains("imported file: FAIL"), out.toString());
  }

  @Test
  void anUnknownAnswerIsRefusedWithItsLineAndNothingIsReceived() throws Exception {
    String answers = answers(ANSWERS.replace("\"cues\": {}", "\"cues\": {\"x\": \"y\"}"));
    int code =
        run("measure", "none.csv", "--answers=" + answers, "--shop=" + folder.resolve("shop"));
    assertEquals(1, code);
    assertTrue(err.toString().contains("answers.json:3"), err.toString());
  }
}
