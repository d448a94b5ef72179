package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In which condition a core came, and what its customer said. */
class InspectCommandTest {
  private static final String CORE =
      """
      {"who": "A. Tester",
       "received": {"family": "sd48", "serial": "S-9"},
       "cues": {"bosses": "6", "connector": "2-row grey", "potting": "soft gel", "mass": 520},
       "checklist": {"moisture": "dry", "pins": "bent", "pins/3": "bent"},
       "symptoms": {"codes": [{"code": "open circuit, all", "where": "every output"}],
                    "when": "cold"}}
      """;

  @TempDir private Path folder;

  @Test
  void aFileIsReadAndEverythingSaid() throws IOException {
    JsonNode json = fromFile(CORE).json();
    assertEquals("C", json.get("grade").asText());
    assertEquals("pins: bent", json.at("/blocking/0").asText());
    assertEquals("pins/3", json.at("/lines/0/pins/0/id").asText());
    assertEquals(520, json.at("/mass/value_g").asDouble());
    assertEquals(5, json.at("/mass/U_g").asDouble());
    assertEquals("A2", json.at("/mass/variant").asText());
    assertTrue(json.at("/mass/differs").asBoolean());
    assertTrue(json.get("notAnswered").toString().contains("\"seals\""));
    assertEquals("every output", json.at("/symptoms/outputs").asText());
    assertTrue(json.at("/symptoms/pointsAt/module").asDouble() > 0.6);
    assertTrue(json.at("/symptoms/says/1").asText().contains("a report is no test"));
    Typing words = inspect("", "S-9");
    assertTrue(words.out().contains("Nothing may be energised: pins: bent."), words.out());
    assertTrue(words.out().contains("It usually brings 40 to 60 % of the deposit."), words.out());
  }

  @Test
  void anOutputThatTheFamilyHasNotIsRefusedWithItsLine() throws IOException {
    Typing refused = fromFile(CORE.replace("\"every output\"", "9"));
    assertEquals(1, refused.code());
    assertTrue(
        refused.err().contains("/symptoms/codes/0/where: '9' is no output of sd48. Write 1 to 8"),
        refused.err());
    Typing wrong = fromFile(CORE.replace("\"cold\"", "\"frosty\""));
    assertTrue(wrong.err().contains("answers.json:6: /symptoms/when"), wrong.err());
  }

  /** Complaint, arrival, an opened housing: the joint is asked about because of it. */
  @Test
  void theChecklistAsksOnlyWhatIsWorthAsking() throws IOException {
    fromFile(
        "{\"who\": \"A\", \"received\": {\"family\": \"sd48\", \"serial\": \"S-9\"},"
            + " \"cues\": {}, \"checklist\": {}}");
    Typing talk = inspect("1\n2\n0\n1\n1\n3\n1\n.\n", "S-9", "--by", "R. Acker");
    assertEquals(0, talk.code(), talk.err());
    assertTrue(talk.err().contains("outside: Do the two halves"), talk.err());
    JsonNode json = inspect("", "S-9", "--json").json();
    assertEquals("C", json.get("grade").asText());
    assertEquals("outside: opened before", json.at("/because/0").asText());
    assertEquals("cold", json.at("/symptoms/when").asText());
    assertEquals("R. Acker", json.at("/lines/0/who").asText());
    assertTrue(json.get("notAnswered").toString().contains("screws"), json.toString());
  }

  /** A remarkable line is asked about pin by pin, each by its mark and what it carries. */
  @Test
  void pinsAreAskedOneByOne() throws IOException {
    fromFile(
        CORE.replace("\"pins/3\": \"bent\"", "\"arrival\": \"well packed\"")
            .replace("\"pins\": \"bent\"", "\"pins\": \"green or black\""));
    Typing talk = inspect("0\n0\n0\n0\n2\n3\n.\n", "S-9", "--by", "R. Acker");
    assertTrue(talk.err().contains("Pin 1, feed +?"), talk.err());
    assertTrue(talk.err().contains("Pin 2, feed +?"), talk.err());
    JsonNode json = inspect("", "S-9", "--json").json();
    assertEquals("pins: bent", json.at("/blocking/0").asText(), json.toString());
  }

  private Typing fromFile(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("answers.json"), text);
    return inspect("", "--answers", file, "--json");
  }

  private Typing inspect(String typed, Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.add(0, "inspect");
    return Typing.inShop(folder.resolve("shop"), typed, all.toArray());
  }
}
