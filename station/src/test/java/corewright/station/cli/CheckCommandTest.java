package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.reports.ledger.Tags;
import corewright.station.work.Dialects;
import corewright.station.work.Home;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

class CheckCommandTest {
  private static final Path HOME = Path.of(System.getProperty("corewright.home"));
  private static final String ARRIVAL = "profiles/families/sd48/sd48-arrival.json";
  private static final String BENCH = "fixtures/benches/emulated-sd48.json";

  @TempDir private Path folder;

  private record Ran(int code, String out, String err) {}

  private static Ran check(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err, true));
    List<String> words = new ArrayList<>(List.of("check"));
    for (Object arg : args) {
      words.add(arg.toString());
    }
    int code = line.execute(words.toArray(String[]::new));
    return new Ran(code, out.toString(), err.toString());
  }

  private static Path home(String file) {
    return HOME.resolve(file);
  }

  private Path edited(String file, String was, String now) throws IOException {
    String text = Files.readString(home(file));
    assertTrue(text.contains(was), file + " has no " + was);
    return Files.writeString(folder.resolve("edited.json"), text.replace(was, now));
  }

  @Test
  void aTemplateIsCheckedLineByLine() throws IOException {
    StringWriter out = new StringWriter();
    CommandLine line = Main.commandLine().setOut(new PrintWriter(out));
    assertEquals(0, line.execute("template", "letter"));
    Path file = Files.writeString(folder.resolve("letter.txt"), out.toString());
    Ran good = check(file);
    assertEquals(0, good.code, good.err);
    assertTrue(good.out.contains("is good: template of a letter"), good.out);
    Files.writeString(
        file, out.toString().replace("[cautions]\n", "").replace("[sign]", "[sign]\n{boss}"));
    Ran bad = check(file);
    assertEquals(1, bad.code);
    assertTrue(bad.err.contains("[cautions]: this section is missing and may never"), bad.err);
    assertTrue(bad.err.contains("letter.txt:12: {boss}: there is no such placeholder"), bad.err);
    assertTrue(bad.err.contains("2 mistakes; nothing was run."), bad.err);
  }

  @Test
  void aShopsFileIsCheckedWithItsColourAndLogo() throws IOException {
    Path file = folder.resolve("shop.json");
    String named = "{\"name\": \"Mill Yard\", \"address\": \"Street 1\"";
    Files.writeString(file, named + "}");
    assertEquals(0, check(file).code);
    Files.writeString(file, named + ",\n\"colour\": \"#FFC0A0\"}");
    assertTrue(
        check(file).err.contains("/colour: #FFC0A0 cannot be the shop's colour: its contrast"));
    Files.writeString(file, named + ",\n\"logo\": \"../secret.png\"}");
    assertEquals(1, check(file).code);
    Files.writeString(folder.resolve("logo.png"), "no picture");
    Files.writeString(file, named + ",\n\"logo\": \"logo.png\"}");
    assertTrue(check(file).err.contains("logo: there is no picture in it. Save it again"));
  }

  @ParameterizedTest
  @CsvSource({
    ARRIVAL + ", load-hold profile sd48-arrival",
    "profiles/families/ie110/family.json, module family ie110",
    BENCH + ", bench description emulated-sd48",
    "fixtures/dialects/emulated-load.json, instrument dialect emulated-load"
  })
  void saysWhatAGoodFileIs(String file, String what) {
    Ran ran = check(home(file));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith(home(file) + " is good: " + what + ", revision "), ran.out());
    assertEquals("", ran.err());
  }

  @ParameterizedTest
  @MethodSource("everyFile")
  void everyFileThatComesWithTheProgramIsGood(Path file) {
    Ran ran = check(file);
    assertEquals(0, ran.code(), ran.err());
  }

  static List<Path> everyFile() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("profiles/families", "fixtures/benches", "fixtures/dialects")) {
      try (var found = Files.walk(home(folder))) {
        found
            .filter(f -> f.toString().endsWith(".json") && !f.toString().endsWith(".schema.json"))
            .forEach(files::add);
      }
    }
    assertTrue(files.size() >= 20, files.toString());
    return files;
  }

  @Test
  void namesEveryMistakeOnStderrWithItsLine() throws IOException {
    Path file = edited(ARRIVAL, "\"load_A\": 2.0", "\"load_A\": 20");
    Ran ran = check(file);
    assertEquals(1, ran.code());
    assertEquals("", ran.out());
    assertTrue(
        ran.err()
            .contains(
                file
                    + ":24: /steps/6/load_A: 20 A is above the rated load of sd48, 2 A. Write at"
                    + " most 2"),
        ran.err());
    assertTrue(ran.err().strip().endsWith("4 mistakes; nothing was run."), ran.err());
  }

  @Test
  void aFileThatIsNoneOfThemIsSaidToBe() throws IOException {
    Path file = Files.writeString(folder.resolve("x.json"), "{ \"title\": \"Soup\" }");
    Ran ran = check(file);
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("none of: family, profile, bench description, dialect"));
    assertEquals(1, check(folder.resolve("none.json")).code());
  }

  @Test
  void jsonOnStdoutAndNothingElse() throws IOException {
    JsonNode good = new ObjectMapper().readTree(check(home(ARRIVAL), "--json").out());
    assertTrue(good.path("good").asBoolean());
    assertEquals("sd48-arrival", good.path("id").asText());
    Ran ran = check(edited(ARRIVAL, "\"unit\": \"s\"", "\"unit\": \"ms\""), "--json");
    assertEquals(1, ran.code());
    assertEquals("", ran.err());
    JsonNode mistake = new ObjectMapper().readTree(ran.out()).path("mistakes").path(0);
    assertEquals("recovery is held in s, not in ms", mistake.path("message").asText());
    assertTrue(mistake.path("line").asInt() > 30);
  }

  @Test
  void aCautionLetsTheFilePass() {
    Ran ran = check(home("profiles/families/ref48/ref48-steady.json"));
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("caution: "), ran.out());
    assertTrue(ran.out().contains("Sample with more than 202736 Hz to see it"), ran.out());
  }

  @Test
  void aBenchThatCanRunTheProfileIsSaidTo() {
    Ran ran = check(home(ARRIVAL), "--bench", home(BENCH));
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().contains("and 2006000 are needed."), ran.out());
  }

  /** 115,200 bit/s carry 11,520 bytes a second: four channels at 743 samples a second. */
  @Test
  void aProfileThatNeedsMoreThanTheLineCarriesIsRefusedWithTheHighestRate() throws IOException {
    Path slow = edited(BENCH, "\"bytesPerSecond\": 40000000", "\"bytesPerSecond\": 11520");
    Ran ran = check(home(ARRIVAL), "--bench", slow);
    assertEquals(1, ran.code());
    assertTrue(
        ran.err()
            .contains(
                ":8: /sampleRate_Hz: with 4 channels it needs 2006000 bytes a second, and the"
                    + " digitizer's line on emulated-sd48 carries 11520. The highest rate that fits"
                    + " is 743 Hz"),
        ran.err());
  }

  @Test
  void aProfileThatNeedsMoreThanTheDigitizerTakesIsRefused() throws IOException {
    Path lines = home("fixtures/benches/emulated-sd48-lines.json");
    Ran fast = check(home(ARRIVAL), "--bench", lines);
    assertEquals(1, fast.code());
    assertTrue(
        fast.err()
            .contains(
                "it asks for 250000 samples a second, and the digitizer of emulated-sd48-lines"
                    + " takes at most 50"),
        fast.err());
    // two million bytes a second as 16 bit codes, and what stands around each block of 5 ms
    Ran blocks =
        check(home(ARRIVAL), "--bench", home("fixtures/benches/emulated-sd48-blocks.json"));
    assertEquals(0, blocks.code(), blocks.err());
    assertTrue(blocks.out().contains("and 2020000 are needed."), blocks.out());
  }

  @Test
  void whatIsReadOverModbusIsFoundByItsAdapterAlone() throws IOException {
    String bench = "fixtures/benches/emulated-sd48-registers.json";
    assertEquals(0, check(edited(bench, "emulated:digitizer", "usb:0403:6001:A1")).code());
    Ran ran = check(edited(bench, "emulated:digitizer", "idn:COREWRIGHT"));
    assertEquals(1, ran.code());
    assertTrue(
        ran.err().contains("/instruments/2/port: what is read over Modbus does not answer *IDN?"),
        ran.err());
    // one question of 8 bytes and one answer of 13, ten times a second
    Path slow = edited(ARRIVAL, "\"sampleRate_Hz\": 250000", "\"sampleRate_Hz\": 10");
    Ran fits = check(slow, "--bench", home(bench));
    assertTrue((fits.out() + fits.err()).contains("210 are needed"), fits.out() + fits.err());
  }

  @Test
  void aBenchWithAnotherFixtureOrTooSmallInstrumentsIsRefused() throws IOException {
    Ran other = check(home(ARRIVAL), "--bench", home("fixtures/benches/emulated-pv65.json"));
    assertEquals(1, other.code());
    assertTrue(other.err().contains("fits pv65, not sd48"), other.err());
    Path strong = edited(ARRIVAL, "\"inputLimit_A\": 20", "\"inputLimit_A\": 80");
    Ran ran = check(strong, "--bench", home(BENCH));
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("80 A is above what the source of emulated-sd48 takes, 60 A"));
  }

  @Test
  void whatABenchCannotDoIsSaidStepByStepWithWhatBecomesOfIt() throws IOException {
    Path full = home("profiles/families/sd48/sd48-full.json");
    Ran able = check(full, "--bench", home(BENCH));
    String pins = "--hand pins=VALUE±U,INSTRUMENT";
    assertTrue(able.out().contains(pins), able.out());
    assertFalse(able.out().contains("Step crank"));
    assertFalse(able.out().contains("Step pulses") || able.out().contains("Step burst"));
    Path plain = edited(BENCH, "\"dialect\": \"emulated-load\"", "\"dialect\": \"by-hand\"");
    String text = Files.readString(plain);
    assertTrue(text.contains("40000000"), text);
    Files.writeString(plain, text.replace("40000000", "4000000"));
    Ran ran = check(full, "--bench", plain);
    assertEquals(0, ran.code(), ran.err());
    for (String said :
        List.of(
            pins,
            "Step pulses, \"Load pulses at three rates\": the load of this bench does not pulse"
                + " by itself. It stands as not measured unless somebody enters it: --hand"
                + " pulses=VALUE±U,INSTRUMENT.",
            "Step crank: Without events: the load of this bench does not pulse by itself.",
            "Step burst, \"Ripple at half load\": the digitizer of this bench or its line does not"
                + " take 1500000 samples a second. It stands")) {
      assertTrue(ran.out().contains(said), said + " in " + ran.out());
    }
    assertFalse(ran.out().contains("stand as not measured.\n"), ran.out());
    Files.writeString(
        plain,
        Files.readString(plain)
            .replaceAll("(?m)^ *\\{\"role\": \"thermometer.*\\R", "")
            .replace("\"channel\": \"inputCurrent\"", "\"channel\": \"keyed\""));
    String lacking = check(full, "--bench", plain, "--json").out();
    for (String said : List.of("Step pulses", "No channel inputCurrent: ", "No thermometer: ")) {
      assertTrue(lacking.contains(said), said + " in " + lacking);
    }
    assertFalse(lacking.contains("No meter"), lacking);
  }

  /** 10 A for the pulses, 2 A at most elsewhere: what is left out asks for nothing. */
  @Test
  void aSmallLoadIsAskedForItsPulsesOnlyWhereItMakesThem() throws IOException {
    Path full = home("profiles/families/sd48/sd48-full.json");
    Path bench = edited(BENCH, "\"dialect\": \"emulated-load\"", "\"dialect\": \"small\"");
    String load =
        Files.readString(home("fixtures/dialects/emulated-load.json"))
            .replace("\"id\": \"emulated-load\"", "\"id\": \"small\"")
            .replaceAll("\"most\": 40, \"res", "\"most\": 5, \"res");
    Files.writeString(folder.resolve("small.json"), load);
    Ran pulsing = check(full, "--bench", bench);
    assertEquals(1, pulsing.code(), pulsing.out());
    assertTrue(
        pulsing.err().contains("pulse_A: 10 A is above what the load of emulated-sd48 takes, 5 A"),
        pulsing.err());
    Files.writeString(
        folder.resolve("small.json"),
        load.replaceAll("(?s)    \"pulse\": \\[.*?\\],\\R", "")
            .replaceAll("    \"steady\": .*\\R", "")
            .replaceAll("    \"(low_A|high_A|width_s|period_s)\": .*\\R", ""));
    Ran steady = check(full, "--bench", bench);
    assertEquals(0, steady.code(), steady.err());
    assertTrue(steady.out().contains("Step pulses, "), steady.out());
    assertFalse(steady.out().contains("swing"), "this source can: " + steady.out());
    Files.writeString(
        folder.resolve("still.json"),
        Files.readString(home("fixtures/dialects/emulated-source.json"))
            .replace("\"id\": \"emulated-source\"", "\"id\": \"still\"")
            .replaceAll("    \"(swing|steady|swing_Vpp|rate_Hz)\": .*\\R", ""));
    Files.writeString(bench, Files.readString(bench).replace("\"emulated-source\"", "\"still\""));
    Ran still = check(full, "--bench", bench);
    assertTrue(
        still
            .out()
            .contains(
                "Step crank: Without events: the load of this bench does not pulse by itself."
                    + " Without the starter's swing: the source of this bench only stands at its"
                    + " level."),
        still.out() + still.err());
  }

  @Test
  void aBenchThatNamesWhatIsNotThereIsRefused() throws IOException {
    Ran dialect = check(edited(BENCH, "\"dialect\": \"emulated-load\"", "\"dialect\": \"none\""));
    assertEquals(1, dialect.code());
    assertTrue(dialect.err().contains("there is no dialect 'none'"), dialect.err());
    Ran role =
        check(edited(BENCH, "\"dialect\": \"emulated-load\"", "\"dialect\": \"emulated-switch\""));
    assertTrue(role.err().contains("'emulated-switch' speaks to a switch"), role.err());
    Ran family = check(edited(BENCH, "\"ref48\"", "\"ref84\""));
    assertTrue(family.err().contains("there is no family 'ref84'"), family.err());
    String units =
        """
        "revision": 1, "referenceUnits": [
        "U-00001",
        {"tag": "U-00002X", "kind": "good"},
        {"tag": "U-00003%s", "kind": "bad", "profile": "sd48-arival", "group": "CAPACITOR"}],
        """
            .formatted(Tags.of(3).substring(7));
    Ran unproved = check(edited(BENCH, "\"revision\": 1,", units));
    assertEquals(1, unproved.code());
    assertTrue(
        unproved.err().contains(":5: /referenceUnits/0: 'U-00001' lacks its check character")
            && unproved.err().contains("Write " + Tags.of(1)),
        unproved.err());
    for (String words :
        List.of(
            ":6: /referenceUnits/1/tag: 'U-00002X' is no tag: a character is wrong",
            ":7: /referenceUnits/2/profile: there is no profile 'sd48-arival'",
            ":7: /referenceUnits/2/group: there is no group of parts 'CAPACITOR'",
            "4 mistakes")) {
      assertTrue(unproved.err().contains(words), unproved.err());
    }
  }

  @Test
  void aDialectBesideItsBenchNeedsNoBuild() throws IOException {
    Path bench = edited(BENCH, "\"dialect\": \"emulated-load\"", "\"dialect\": \"our-load\"");
    String shipped = Files.readString(home("fixtures/dialects/emulated-load.json"));
    Path own = folder.resolve("our-load.json");
    Files.writeString(own, shipped.replace("\"id\": \"emulated-load\"", "\"id\": \"our-load\""));
    assertEquals(0, check(home(ARRIVAL), "--bench", bench).code());
    assertEquals("our-load", new Dialects(new Home(HOME), bench).apply("our-load").id());
    assertEquals(
        "emulated-load", new Dialects(new Home(folder), bench).apply("emulated-load").id());
  }

  @Test
  void onlyAProfileIsRunOnABench() {
    Ran ran = check(home(BENCH), "--bench", home(BENCH));
    assertEquals(1, ran.code());
    assertTrue(ran.err().contains("only a profile is run on a bench"), ran.err());
  }

  @Test
  void aDialectIsPlayedLineByLine() throws IOException {
    String load = "fixtures/dialects/emulated-load.json";
    Ran good = check(home(load), "--play");
    assertEquals(0, good.code(), good.err());
    assertTrue(good.out().matches("(?s).*  ok  \\*IDN\\? +COREWRIGHT,EMULATED-LOAD,1,1.0\\R.*"));
    assertTrue(good.out().contains("is good: instrument dialect"), good.out());
    Path broken = edited(load, "INPut {on}", "INPUTT {on}");
    Ran bad = check(broken, "--play");
    assertEquals(1, bad.code());
    assertTrue(
        bad.out().matches("(?s).*  NO  INPUTT ON +refused with -113,\"Undefined header\"\\R.*"));
    assertTrue(bad.err().contains(broken + ":24: /actions/input/0: INPUTT ON: refused"), bad.err());
    assertTrue(bad.err().contains("2 mistakes, as the emulated instrument has it"), bad.err());
    JsonNode json = new ObjectMapper().readTree(check(broken, "--play", "--json").out());
    assertEquals("*IDN?", json.path("played").path(0).path("sent").asText());
    assertEquals(2, json.path("mistakes").size());
    assertEquals(1, check(home(BENCH), "--play").code(), "a bench is not played");
  }

  @Test
  void theHelpNamesTheExitCodes() {
    Ran ran = check("--help");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("Exit codes:") && ran.out().contains("--bench=FILE"), ran.out());
  }
}
