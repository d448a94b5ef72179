package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code crank} promises to people and to other programs. */
class CrankCommandTest extends Commands {
  /** A crank from 5 to 10 s on a steady supply; the output falls by so many volts a second. */
  private Path log(String name, double supply_V, double slope_V_s) throws IOException {
    StringBuilder log =
        new StringBuilder("Time (s);Driver name;RPM;Battery Voltage (V);Boost V;=1+1\n");
    for (int i = 0; i <= 60; i++) {
      double t = i / 4.0;
      boolean turns = t >= 5 && t < 10;
      log.append(
          String.format(
              Locale.GERMANY,
              "%.2f;A. Person;%d;%.2f;%.2f;=cmd|' /C calc'!A0%n",
              t,
              turns ? 180 : 0,
              turns ? supply_V + 0.05 * (i % 2) : 12.5,
              turns ? 47.5 + slope_V_s * (t - 5) + 0.1 * (i % 2) : 47.9));
    }
    Path file = folder.resolve(name);
    return Files.writeString(file, log.toString());
  }

  private JsonNode json(Object... args) throws IOException {
    String[] all = new String[args.length + 2];
    all[0] = "crank";
    for (int i = 0; i < args.length; i++) {
      all[i + 1] = args[i].toString();
    }
    all[all.length - 1] = "--json";
    assertEquals(0, run(all), err.toString());
    assertEquals("", err.toString());
    return new ObjectMapper().readTree(out.toString());
  }

  @Test
  void jsonHasWhatOtherProgramsAskFor() throws IOException {
    JsonNode json = json(log("log.csv", 10.6, -1));
    assertEquals("supports-fault", json.get("conclusion").asText());
    assertTrue(json.get("reasons").size() > 1);
    assertTrue(json.get("doubts").size() > 0);
    assertEquals("sd48", json.at("/family/id").asText());
    assertEquals("Time (s)", json.at("/time/column").asText());
    assertEquals(0.25, json.at("/time/medianStep_s").asDouble(), 1e-9);
    JsonNode crank = json.at("/cranks/0");
    assertEquals(5.0, crank.get("start_s").asDouble(), 0.3);
    assertEquals(10.0, crank.get("end_s").asDouble(), 0.3);
    // Half a second of inrush and 0.3 s of release are not judged.
    assertEquals(crank.get("start_s").asDouble() + 0.5, crank.at("/window/start_s").asDouble());
    assertTrue(crank.at("/window/end_s").asDouble() <= 9.75 + 1e-9);
    assertEquals("valid", crank.get("inputQualifier").asText());
    JsonNode quarter = crank.at("/outputs/0/lowestQuarter");
    assertEquals(43.5, quarter.get("value").asDouble(), 0.5);
    assertEquals("V", quarter.get("unit").asText());
    assertTrue(quarter.get("u").asDouble() > 0);
    JsonNode drift = crank.at("/outputs/0/drift");
    assertEquals(-60, drift.get("value").asDouble(), 2);
    assertEquals("V/min", drift.get("unit").asText());
  }

  @Test
  void everyReadingStandsOnceMoreInAFlatList() throws IOException {
    JsonNode crank = json(log("log.csv", 10.6, -1)).at("/cranks/0");
    int found = 0;
    for (JsonNode reading : crank.get("readings")) {
      assertTrue(reading.get("value").isNumber());
      assertTrue(reading.get("u").asDouble() >= 0);
      assertFalse(reading.get("unit").asText().isEmpty());
      String channel = reading.get("role").asText().equals("supply") ? "supplies" : "outputs";
      JsonNode tree = crank.get(channel).get(0).get(reading.get("quantity").asText());
      assertEquals(tree.get("value"), reading.get("value"));
      found++;
    }
    assertTrue(found >= 10, found + " readings");
  }

  @Test
  void columnsSayWhatWasTakenForWhatAndPersonsAreDropped() throws IOException {
    JsonNode columns = json(log("log.csv", 10.6, -1)).get("columns");
    List<String> roles = List.of("time", "personal", "speed", "supply", "output", "none");
    for (int i = 0; i < roles.size(); i++) {
      assertEquals(roles.get(i), columns.get(i).get("role").asText());
      assertTrue(columns.get(i).get("confidence").isNumber());
    }
    assertEquals("", columns.get(1).get("name").asText());
    assertEquals("'=1+1", columns.get(5).get("name").asText());
    assertFalse(out.toString().contains("Person"));
    assertFalse(out.toString().contains("cmd|"));
  }

  @ParameterizedTest
  @CsvSource({
    "10.6,-1,supports-fault",
    "10.6,0,supports-good",
    "8.2,-1,void",
    "9.5,-1,supports-fault",
    "10.6,-0.34,inconclusive"
  })
  void theConclusionIsOneOfFour(double supply_V, double slope_V_s, String conclusion)
      throws IOException {
    assertEquals(conclusion, json(log("log.csv", supply_V, slope_V_s)).get("conclusion").asText());
  }

  @Test
  void twoLogsCompareBeforeAndAfter() throws IOException {
    JsonNode json = json(log("before.csv", 10.6, -1), log("after.csv", 10.6, 0));
    assertEquals("supports-fault", json.get("conclusion").asText());
    assertEquals("supports-good", json.at("/after/conclusion").asText());
    JsonNode change = json.at("/comparison/lowestQuarterChange");
    assertEquals(4, change.get("value").asDouble(), 0.7);
    assertTrue(change.get("u").asDouble() > 0);
    assertTrue(json.at("/comparison/reasons").size() > 0);
  }

  @Test
  void peopleGetTheSentenceTheDoubtsTheGuessesAndTheDots() throws IOException {
    assertEquals(0, run("crank", log("log.csv", 10.6, -1).toString()));
    String said = out.toString();
    for (String part :
        List.of(
            ": this log supports a fault of the module.",
            "Why that could be wrong",
            "What to do next",
            "judged 5.50 to",
            "lowest quarter",
            "Taken for (override with --column",
            "'Boost V'",
            "personal or position, dropped",
            "whatever the bench finds stands above it",
            "•")) {
      assertTrue(said.contains(part), part + " is missing in " + said);
    }
    assertFalse(said.contains("A. Person"));
  }

  /** Sentence and table say one and the same of the lowest quarter, and conclude in words. */
  @Test
  void theReadingIsTheSameWhereverItStands() throws IOException {
    for (double slope_V_s : new double[] {-0.7, -1, -1.3, -2.2}) {
      assertEquals(0, run("crank", log("log.csv", 10.6, slope_V_s).toString()));
      String said = out.toString();
      Matcher sentence = Pattern.compile("lowest quarter ([0-9.]+ ± [0-9.]+) V").matcher(said);
      assertTrue(sentence.find(), said);
      assertTrue(said.matches("(?s).*  lowest quarter +" + sentence.group(1) + " V\\R.*"), said);
      assertFalse(said.contains("supports-fault"), said);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"svg", "png"})
  void thePlotIsWrittenWhereItWasAskedFor(String kind) throws IOException {
    Path picture = folder.resolve("plot." + kind);
    JsonNode json = json(log("log.csv", 10.6, -1), "--plot", picture);
    assertEquals(picture.toString(), json.get("plot").asText());
    assertTrue(Files.size(picture) > 10_000);
  }

  @Test
  void aPlotOfAnotherKindOrOverTheLogIsRefused() throws IOException {
    Path log = log("log.svg", 10.6, -1);
    byte[] before = Files.readAllBytes(log);
    assertEquals(1, run("crank", log.toString(), "--plot", folder.resolve("plot.gif").toString()));
    assertTrue(err.toString().contains("neither in .svg nor in .png"), err.toString());
    assertEquals(1, run("crank", log.toString(), "--plot", log.toString()));
    assertTrue(err.toString().contains("is the log itself"), err.toString());
    assertEquals(1, run("crank", log.toString(), "--plot", folder + "/none/plot.svg"));
    assertEquals("", out.toString());
    assertEquals(
        new String(before, Charset.forName("UTF-8")), Files.readString(log), "the log is whole");
  }

  @Test
  void whatCannotBeReadIsRefusedWithLineColumnAndRemedy() throws IOException {
    Path frames = folder.resolve("frames.csv");
    Files.writeString(frames, "Frame,Boost V\n1,48\n2,47\n3,46\n4,47\n5,48\n");
    assertEquals(1, run("crank", frames.toString(), "--json"));
    assertEquals("", out.toString(), "nothing but JSON may stand on stdout");
    assertTrue(err.toString().startsWith(frames + ":1: column 1: "), err.toString());
    assertTrue(err.toString().contains("--rate"), err.toString());
    Path none = folder.resolve("none.csv");
    assertEquals(1, run("crank", none.toString()));
    assertTrue(err.toString().contains("there is no such file"), err.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--rate=0",
        "--column=engine=2",
        "--delimiter=ab",
        "--decimal=;",
        "--window=5",
        "--window=9:5",
        "--nothing"
      })
  void aWrongCommandLineIsSaidToBeOne(String option) throws IOException {
    assertEquals(2, run("crank", log("log.csv", 10.6, -1).toString(), option));
    assertEquals("", out.toString());
    assertFalse(err.toString().isEmpty());
  }

  @Test
  void anUnknownFamilyAndAnUnknownColumnAreRefused() throws IOException {
    String log = log("log.csv", 10.6, -1).toString();
    assertEquals(1, run("crank", log, "--family", "none48"));
    assertEquals(1, run("crank", log, "--column", "output=Nothing"));
    assertTrue(err.toString().contains("Nothing"), err.toString());
  }

  @Test
  void whatAPersonSaysIsTaken() throws IOException {
    JsonNode json = json(log("log.csv", 10.6, -1), "--column", "output=none");
    assertEquals("inconclusive", json.get("conclusion").asText());
    JsonNode windowed = json(log("log.csv", 10.6, -1), "--window", "6:8");
    assertEquals(6.0, windowed.at("/cranks/0/window/start_s").asDouble());
    assertEquals("the window that was given", windowed.at("/cranks/0/shownBy").asText());
  }

  @Test
  void helpNamesEveryOptionAndExitCode() {
    assertEquals(0, run("crank", "--help"));
    for (String part :
        List.of(
            "--family",
            "--column",
            "--unit",
            "--rate",
            "--window",
            "--plot",
            "--json",
            "Exit codes",
            "Examples")) {
      assertTrue(out.toString().contains(part), part);
    }
    assertEquals("", err.toString());
  }
}
