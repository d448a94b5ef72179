package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Deciding anew, from what the record knows; the recorded unit has a low current limit. */
class DecideCommandTest {
  private static final String ANSWERS =
      """
      {"who": "A. Tester",
       "received": {"family": "ref48", "serial": "R-77", "label": "REF", "customer": "Nobody"},
       "cues": {}, "checklist": {}, "agreed": {"approval": "not asked"}}
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private String shop = "";

  @BeforeEach
  void aUnitThatFailed() throws IOException {
    shop = "--shop=" + folder.resolve("shop");
    Path answers = Files.writeString(folder.resolve("answers.json"), ANSWERS);
    assertEquals(
        0, run("measure", recorded(), "--tag=T-1", "--answers=" + answers, shop), err + "");
    assertTrue(out.toString().contains("Fault group"), out.toString());
    out.getBuffer().setLength(0);
  }

  private static String recorded() {
    Path captures = Path.of(System.getProperty("corewright.home"), "fixtures", "captures");
    return captures.resolve("ilim_low_avg").resolve("capture.csv.gz").toString();
  }

  @Test
  void theRowTheSumsTheReadingsTheGroupsAndTheCustomersSentenceAreThere() throws IOException {
    assertEquals(0, run("decide", "T-1", shop), err.toString());
    String said = out.toString();
    assertTrue(said.contains("PENDING (row D76"), said);
    assertTrue(said.contains("Open: Do you approve the quote? customer, until "), said);
    assertTrue(said.contains("43.28"), said);
    assertTrue(said.contains("A replacement brings"), said);
    assertTrue(said.contains("for: the output falls to 43.28"), said);
    assertTrue(said.contains("To the customer: With the input at"), said);
    assertTrue(said.contains("consistent with a power stage that cannot deliver"), said);

    out.getBuffer().setLength(0);
    assertEquals(0, run("decide", "T-1", "--json", shop), err.toString());
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("D76", json.at("/decision/row").asText());
    assertEquals(17, json.at("/decision/saw").size());
    assertEquals("POWER_STAGE_WEAK", json.at("/decision/diagnosis/candidates/0/group").asText());
    assertTrue(json.at("/decision/finding").asText().endsWith("not confirmed."));
  }

  /**
   * Bayes' rule by hand: one opened unit beside the trade's shares, which count as twenty, moves
   * the odds of two groups as it moves their priors. Its own teardown says nothing of a unit.
   */
  @Test
  void whatTheShopFoundOnOpeningCountsInTheNextDiagnosis() throws IOException {
    Path answers = Files.writeString(folder.resolve("second.json"), ANSWERS.replace("77", "78"));
    String record = recorded();
    assertEquals(0, run("measure", record, "--tag=T-2", "--answers=" + answers, shop), err + "");
    JsonNode before = candidates();
    String second = before.at("/1/group").asText();
    double share = Priors.ofTrade().shares().get(Group.valueOf(second));

    assertEquals(0, run("confirm", "T-1", second.toLowerCase(Locale.ROOT), shop), err.toString());
    assertEquals(odds(before), odds(candidates()), 1e-9, "its own");

    String words = second.toLowerCase(Locale.ROOT).replace('_', ' ');
    assertEquals(0, run("confirm", "T-2", words, shop), err.toString());
    assertEquals((1 + 20 * share) / (20 * share), odds(candidates()) / odds(before), 1e-6);

    assertEquals(0, run("confirm", "T-2", "rats", shop), "kept all the same");
    assertTrue(err.toString().contains("counts for no group"), err.toString());
  }

  private static double odds(JsonNode candidates) {
    return candidates.at("/1/probability").asDouble() / candidates.at("/0/probability").asDouble();
  }

  private JsonNode candidates() throws IOException {
    out.getBuffer().setLength(0);
    assertEquals(0, run("decide", "T-1", "--json", shop), err.toString());
    return new ObjectMapper().readTree(out.toString()).at("/decision/diagnosis/candidates");
  }

  @Test
  void anOverrideIsKeptWithWhoAndWhyAndWhatTheOwnerForbidsIsRefused() {
    String[] back = {
      "decide",
      "T-1",
      "--override=RETURN",
      "--to=customer",
      "--by=R. Acker",
      "--why=Boat sails.",
      shop
    };
    assertEquals(0, run(back), err.toString());
    assertEquals(0, run("show", "T-1", shop), err.toString());
    assertTrue(out.toString().contains("RETURN → customer (row D76 overruled"), out.toString());

    String[] rebuilt = back.clone();
    rebuilt[2] = "--override=REBUILD";
    rebuilt[3] = "--to=queue";
    assertEquals(ExitCodes.REFUSED, run(rebuilt));
    assertTrue(err.toString().contains("approval"), err.toString());
  }

  @Test
  void anOverrideWithoutNameIsAUsageError() {
    assertEquals(ExitCodes.USAGE, run("decide", "T-1", "--override=RETURN", "--to=customer", shop));
  }

  @Test
  void anUnknownTagIsRefusedWithARemedy() {
    assertEquals(ExitCodes.REFUSED, run("decide", "T-9", shop));
    assertTrue(err.toString().contains("T-9"), err.toString());
  }

  private int run(String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(arguments);
  }
}
