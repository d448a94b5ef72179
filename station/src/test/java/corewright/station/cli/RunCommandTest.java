package corewright.station.cli;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.port.Link;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.Clock;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.Channel;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.reports.ledger.Tags;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/**
 * From the command line to the record, on a bench with two supply feeds, the second in the place of
 * the input's current. Holds last a quarter of a second.
 */
class RunCommandTest extends Commands {
  private static final Pattern ASKED =
      Pattern.compile(">>> Set the load to ([0-9.]+) A( and switch it on)?\\.");
  private static final Clock CLOCK = Clock.system();

  /** The first unit of a shop proves this bench. */
  private static final String KNOWN =
      "{\"tag\": \"" + Tags.of(1) + "\", \"kind\": \"good\", \"profile\": \"ref48-steady\"}";

  private JsonNode ran = new ObjectMapper().createObjectNode();

  @Test
  void theStationAsksWaitsForTheMeasuredCurrentAndRecordsWho() throws Exception {
    try (EmulatedBench emulated = bench(0.98);
        Link knob =
            new SocketLinks(CLOCK, new SerialLinks(CLOCK))
                .open("knob", String.valueOf(emulated.ports().get("load")), 115_200)) {
      Hand hand = new Hand(knob);
      run(emulated, "by-hand", hand);
      assertEquals(List.of("0.50", "1.00", "2.00", "3.00", "2.00"), hand.set_A);
      assertTrue(hand.heard.toString().contains(">>> Switch the load off."));
      assertTrue(
          hand.heard
              .toString()
              .contains("Reference unit, known good: in order, bench emulated-sd48 is not locked."),
          hand.heard.toString());
    }
    assertEquals("PASS", ran.at("/run/verdict").asText(), ran.toString());
    assertEquals("VALID", ran.at("/run/inputQualifier").asText(), ran.toString());
    assertEquals(0, run("show", "U-00001", "--json", "--shop=" + folder.resolve("shop")));
    JsonNode load = new ObjectMapper().readTree(out.toString()).at("/runs/0/equipment/0");
    assertEquals("load", load.path("role").asText());
    assertEquals("BY HAND,A. Tester,0,0", load.path("identity").asText());
  }

  /** 12 V, of which seven tenths arrive: below the 9 V that the family's zones end at. */
  @Test
  void everySupplyFeedIsQualifiedAndTheWorstDecides() throws Exception {
    StringWriter person = new StringWriter();
    try (EmulatedBench emulated = bench(0.7)) {
      run(emulated, "emulated-load", person);
    }
    assertTrue(
        person.toString().contains("LOCKED. Unit " + Tags.of(1) + " is known good and must come"),
        person.toString());
    assertEquals("VOID", ran.at("/run/verdict").asText(), ran.toString());
    Path wire = folder.resolve("shop/captures/" + ran.at("/run/id").asText() + ".wire");
    String local = HexFormat.of().withUpperCase().formatHex("SYSTem:LOCal".getBytes(US_ASCII));
    assertTrue(
        Files.readString(wire).contains(" thermometer > " + local),
        "given back to its front panel");
    String reason = ran.at("/run/reasons/0").asText();
    assertTrue(reason.matches("The supply feed keyed fell to 8\\.[34].*"), reason);
    isPlayedBackWithoutTheBench(wire);
  }

  /** The emulated bench is closed by then, and the record stays as it is. */
  private void isPlayedBackWithoutTheBench(Path wire) throws Exception {
    JsonNode same = playedBack(wire, "ref48-steady", 0);
    assertEquals("COMPLETED", same.path("end").asText(), same.toString());
    assertTrue(same.path("same").asBoolean(), same.toString());
    List<String> lines = Files.readAllLines(wire);
    Path half = folder.resolve("half.wire"); // as a program leaves it that is killed
    Files.write(half, lines.subList(0, lines.size() / 2));
    JsonNode torn = playedBack(half, "ref48-steady", ExitCodes.REFUSED);
    assertTrue(torn.path("astray").asBoolean() && torn.path("left").asInt() == 0, "" + torn);
    assertTrue(torn.path("saw").asText().contains("the log ends here"), "" + torn);
    assertEquals(0, run("show", "U-00001", "--json", "--shop=" + folder.resolve("shop")));
    assertEquals(1, new ObjectMapper().readTree(out.toString()).path("runs").size());
  }

  private JsonNode playedBack(Path wire, String profile, int code) throws Exception {
    String home = System.getProperty("corewright.home");
    System.setProperty("corewright.home", folder.resolve("home").toString());
    try {
      int left =
          run(
              "playback",
              wire.toString(),
              "--bench=" + folder.resolve("bench.json"),
              "--profile=" + profile,
              "--out=" + folder.resolve("played-" + wire.getFileName()),
              "--json");
      assertEquals(code, left, err.toString());
    } finally {
      System.setProperty("corewright.home", home);
    }
    return new ObjectMapper().readTree(out.toString());
  }

  /**
   * @param share of the input that arrives at the second feed
   */
  private static EmulatedBench bench(double share) throws Exception {
    Setup setup = Setup.of(UnitParameters.healthy("ref48"), 1).over(LineKind.LOOPBACK);
    Channel keyed = new Channel("keyed", "V", 0.00125, 0.002, 0, share, 0, 0, 0);
    return EmulatedBench.open(setup.on(setup.harness().change("inputCurrent", c -> keyed)));
  }

  private void run(EmulatedBench emulated, String load, Writer person) throws Exception {
    String home = System.getProperty("corewright.home");
    Path own = shortHome(Path.of(home));
    Path bench = description(emulated, Path.of(home), load);
    String answers = answers(ANSWERS);
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(person, true));
    System.setProperty("corewright.home", own.toString());
    try {
      int code =
          line.execute(
              "run",
              "--bench=" + bench,
              "--profile=ref48-steady",
              "--answers=" + answers,
              "--confirmed-by=A. Tester",
              "--shop=" + folder.resolve("shop"),
              "--wire-log",
              "--json");
      assertEquals(0, code, person.toString());
    } finally {
      System.setProperty("corewright.home", home);
    }
    ran = new ObjectMapper().readTree(out.toString());
  }

  private Path shortHome(Path home) throws Exception {
    Path own = folder.resolve("home");
    copy(home.resolve("profiles/schemas"), own.resolve("profiles/schemas"));
    Path families = own.resolve("profiles/families/ref48");
    copy(home.resolve("profiles/families/ref48"), families);
    Path file = families.resolve("ref48-steady.json");
    ObjectNode profile = (ObjectNode) new ObjectMapper().readTree(file.toFile());
    profile.withArray("feeds").addObject().put("name", "keyed");
    profile.path("steps").forEach(RunCommandTest::shorten);
    JsonNode first = profile.path("limits").get(0);
    profile.putArray("limits").add(first);
    Files.writeString(file, profile.toString());
    return own;
  }

  private static void copy(Path from, Path to) throws Exception {
    Files.createDirectories(to);
    try (Stream<Path> all = Files.list(from)) {
      for (Path file : all.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }

  private static void shorten(JsonNode step) {
    if (step.path("kind").asText().equals("hold")) {
      ((ObjectNode) step).put("hold_s", 0.25);
    }
  }

  /** The shipped bench with another load, and the second feed. */
  private Path description(EmulatedBench emulated, Path home, String load) throws Exception {
    String text = Files.readString(home.resolve("fixtures/benches/emulated-sd48.json"));
    for (var port : emulated.ports().entrySet()) {
      text = text.replace("emulated:" + port.getKey() + "\"", port.getValue() + "\"");
    }
    return Files.writeString(
        folder.resolve("bench.json"),
        text.replace("\"dialect\": \"emulated-load\"", "\"dialect\": \"" + load + "\"")
            .replace("\"channel\": \"inputCurrent\"", "\"channel\": \"keyed\"")
            .replace("\"revision\": 1,", "\"revision\": 1, \"referenceUnits\": [" + KNOWN + "],"));
  }

  /** Reads what the station asks for, and turns the load's knob. */
  private static final class Hand extends Writer {
    final StringWriter heard = new StringWriter();
    final List<String> set_A = new ArrayList<>();
    private final Link knob;

    Hand(Link knob) {
      this.knob = knob;
    }

    @Override
    public void write(char[] text, int from, int count) {
      String words = new String(text, from, count);
      heard.write(words);
      Matcher asked = ASKED.matcher(words);
      if (asked.find()) {
        set_A.add(asked.group(1));
        turn("CURRent " + asked.group(1) + ";:INPut ON");
      } else if (words.contains(">>> Switch the load off.")) {
        turn("INPut OFF");
      }
    }

    private void turn(String message) {
      byte[] bytes = (message + ";*OPC?\n").getBytes(StandardCharsets.US_ASCII);
      knob.write(bytes, Duration.ofSeconds(5));
      assertTrue(knob.read(new byte[16], Duration.ofSeconds(5)) > 0, "the knob was turned");
    }

    @Override
    public String toString() {
      return heard.toString();
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
