package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which build is it: from a file, by questions, and again by another key. */
class IdentifyCommandTest {
  private static final String SWAPPED =
      """
      {"who": "A. Tester",
       "received": {"family": "sd48", "serial": "4417-0887", "label": "SD48-20 · 1431"},
       "cues": {"bosses": {"answer": "8", "photo": "bosses.jpg"}, "connector": "1-row black",
                "mass": 492, "partNumber": "SD48-20", "dateCode": "1431"},
       "checklist": {"label": "glued over or moved"}}
      """;

  @TempDir private Path folder;

  @Test
  void aFileIsWeighedAndEverythingSaid() throws IOException {
    Files.writeString(folder.resolve("bosses.jpg"), "not really a picture");
    JsonNode json = fromFile(SWAPPED).json();
    assertEquals("A4", json.get("variant").asText());
    assertEquals("conditional", json.get("serviceable").asText());
    assertEquals(2, json.get("keyRevision").asInt());
    assertEquals(
        "'dateCode' was read as 1431, 2014w31, 122 weeks before the first A4 was made"
            + " (reliability 0.70).",
        json.at("/conflicts/1").asText(),
        json.get("conflicts").toString());
    assertEquals("relabelled", json.at("/history/0/past").asText());
    JsonNode bosses = json.at("/answers/0");
    assertEquals("A. Tester", bosses.get("who").asText());
    // printf 'not really a picture' | sha256sum
    String photo = "fe1a4ab1fb6347036bead73597d5d2958b26ac0b96f68ca2f6dcee53a50f297e";
    assertEquals(photo, bosses.get("photoSha256").asText());
    assertTrue(Files.isRegularFile(folder.resolve("shop/files").resolve(photo)), photo);
    double sum = 0;
    for (JsonNode p : json.get("posteriors")) {
      sum += p.asDouble();
    }
    assertEquals(1, sum, 1e-9);
  }

  /** A pipe that begins with the first answer: kept under a name that is none, nobody answers. */
  @Test
  void anAnswerIsNotTakenForAName() {
    for (Typing typed :
        List.of(identify("1\n1\nR-1\n"), identify("", "--by", "7"), identify("12\n"))) {
      assertEquals(ExitCodes.REFUSED, typed.code(), typed.out());
      assertTrue(typed.err().contains("is no name: it has no letter"), typed.err());
      assertTrue(typed.err().contains("--by NAME"), typed.err());
    }
    assertEquals(
        "{}",
        Typing.nothing("board", "--json", "--shop", folder.resolve("shop"))
            .out()
            .strip()
            .replaceAll("\\s", ""));
  }

  @Test
  void aDateThatCannotBeIsKeptAndSaid() throws IOException {
    Files.writeString(folder.resolve("bosses.jpg"), "x");
    JsonNode json = fromFile(SWAPPED.replace("\"1431\"", "\"1499\"")).json();
    assertTrue(
        json.get("conflicts").toString().contains("'dateCode' was read as 1499 and counts for"),
        json.get("conflicts").toString());
  }

  @Test
  void whatIsNoAnswerIsRefusedWithItsLineAndWhatWouldBe() throws IOException {
    Typing refused = fromFile(SWAPPED.replace("492", "\"heavy\""));
    assertEquals(1, refused.code());
    assertTrue(refused.err().contains("answers.json:4: /cues/mass: 'heavy' is no answer to mass"));
    assertTrue(refused.err().contains("or the number in g"), refused.err());
    assertEquals(1, identify("", "4417-0887", "--json").code(), "nothing was received");
  }

  @Test
  void whatIsOfNoTypeThatMayStandThereIsRefusedWithThoseThatMay() throws IOException {
    Typing refused = fromFile(SWAPPED.replace("492", "[492]"));
    assertTrue(
        refused
            .err()
            .contains(
                "answers.json:4: /cues/mass: a list stands here, and text in double quotes or a"
                    + " number or an object, { … } is needed"),
        refused.err());
  }

  /** Somebody with one digit at a time: a new sd48, its connector, a step back, its bosses. */
  @Test
  void questionsAreAnsweredWithOneDigitAndNothingIsLostWhenTheyStop() {
    Typing talk = identify("R. Acker\n3\n1\nS-1\nSD48-10\nNobody\nno start\n3\n-\n1\n7\n1\n");
    assertEquals(0, talk.code(), talk.err());
    assertTrue(talk.err().contains("Which connector does it have?"), talk.err());
    assertTrue(talk.err().contains("'7' is not among the choices."), talk.err());
    JsonNode json = identify("", "S-1", "--json").json();
    assertEquals("connector", json.at("/answers/0/id").asText());
    assertEquals("2-row grey", json.at("/answers/0/answer").asText(), "the step back counts");
    assertEquals("R. Acker", json.at("/answers/0/who").asText());
    assertEquals(2, json.get("answers").size(), json.get("answers").toString());
    assertTrue(talk.out().contains("Look at next: "), talk.out());
  }

  @Test
  void aKeyThatSaysWhatItWouldChange() {
    Typing talk = identify("R. Acker\n3\n1\nS-1\n\n\n\n?\n.\n");
    assertTrue(
        talk.err()
            .contains(
                "2-row black (chance 0.22): most probable is then A3, which cannot be rebuilt"),
        talk.err());
  }

  /** Ten letters of boards: eight on a page, 9 for more. */
  @Test
  void moreThanNineChoicesAreStillOneDigit() {
    Asking asking =
        new Asking(
            new java.io.BufferedReader(new java.io.StringReader("9\n2\n")),
            new java.io.PrintWriter(new java.io.StringWriter()));
    Asking.Reply reply =
        asking.ask(
            new Asking.Question(
                java.util.List.of("?"),
                Stream.of("B C D E F G H J K other".split(" ")).toList(),
                java.util.List.of()));
    assertEquals(new Asking.Reply(Asking.Kind.ANSWER, "other"), reply);
  }

  @Test
  void withNobodyThereItSaysWhereTheUnitStands() throws IOException {
    Files.writeString(folder.resolve("bosses.jpg"), "x");
    fromFile(SWAPPED);
    Typing alone = identify("", "4417-0887");
    assertEquals(0, alone.code(), alone.err());
    assertTrue(alone.out().contains("A4, gel-filled build with bonded output stage"), alone.out());
    assertTrue(alone.out().contains("dateCode     1431  (A. Tester"), alone.out());
  }

  /** A key in which what was A4 has become another build: the unit is listed, and kept if asked. */
  @Test
  void oldUnitsGoThroughANewKey() throws IOException {
    Files.writeString(folder.resolve("bosses.jpg"), "x");
    fromFile(SWAPPED);
    Typing same = identify("", "--rekey", "sd48");
    assertTrue(same.out().contains("1 unit, 0 of another build"), same.out() + same.err());
    String home = System.getProperty("corewright.home");
    System.setProperty("corewright.home", editedHome(Path.of(home)).toString());
    try {
      Typing other = identify("", "--rekey", "sd48");
      assertTrue(other.out().contains("A4 (key revision 2) → A9"), other.out() + other.err());
      assertTrue(other.out().contains("nothing was written"), other.out());
      JsonNode json = identify("", "--rekey", "sd48", "--json", "--keep", "--by", "Q").json();
      assertEquals("A9", json.at("/changed/0/now").asText());
      assertEquals(3, json.get("keyRevision").asInt());
      assertTrue(identify("", "--rekey", "sd48").out().contains("1 unit, 0 of another build"));
    } finally {
      System.setProperty("corewright.home", home);
    }
  }

  @Test
  void keepingNeedsAName() {
    assertEquals(2, identify("", "--rekey", "sd48", "--keep").code());
    assertFalse(Files.exists(folder.resolve("shop/files")));
  }

  private Path editedHome(Path home) throws IOException {
    Path edited = folder.resolve("home");
    try (Stream<Path> files = Files.walk(home.resolve("profiles"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
        if (!file.toString().contains("target")) {
          Path copy = edited.resolve(home.relativize(file));
          Files.createDirectories(copy.getParent());
          String text = Files.readString(file);
          if (file.endsWith(Path.of("sd48", "family.json"))) {
            text =
                text.replace("\"id\": \"A4\"", "\"id\": \"A9\"")
                    .replace("\"revision\": 2", "\"revision\": 3");
          }
          Files.writeString(copy, text);
        }
      }
    }
    return edited;
  }

  private Typing fromFile(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("answers.json"), text);
    return identify("", "--answers", file, "--json");
  }

  private Typing identify(String typed, Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.add(0, "identify");
    return Typing.inShop(folder.resolve("shop"), typed, all.toArray());
  }
}
