package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Deciding anew, from what the record knows; the recorded unit has a low current limit. */
class DecideCommandTest extends Commands {
  private String shop = "";

  @BeforeEach
  void aUnitThatFailed() throws IOException {
    shop = "--shop=" + folder.resolve("shop");
    String answers = "--answers=" + answers(ANSWERS.replace("approved", "not asked"));
    String file = recorded("ilim_low_avg");
    assertEquals(0, run("measure", file, "--tag=T-1", answers, shop), err.toString());
    assertTrue(out.toString().contains("Fault group"), out.toString());
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
    String answers = "--answers=" + answers(ANSWERS.replace("77", "78"));
    String record = recorded("ilim_low_avg");
    assertEquals(0, run("measure", record, "--tag=T-2", answers, shop), err.toString());
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
    assertEquals(0, run("decide", "T-1", "--json", shop), err.toString());
    return new ObjectMapper().readTree(out.toString()).at("/decision/diagnosis/candidates");
  }

  /** Nothing is certain, and nobody reads nanoseconds; JSON keeps both as they are. */
  @Test
  void peopleAreToldChancesAndTimesInWords() throws IOException {
    for (String command : List.of("decide", "show")) {
      assertEquals(0, run(command, "T-1", shop), err.toString());
      assertTrue(out.toString().matches("(?s).* ([0-9.]+|over 0.99)  [a-z].*"), out.toString());
      assertFalse(
          out.toString().matches("(?s).*(probability|\\n) +[01][.]00\\b.*"), out.toString());
      assertFalse(out.toString().matches("(?s).*[0-9]T[0-9]{2}:.*"), out.toString());
    }
    assertTrue(
        out.toString().matches("(?s).*Received [0-9]{4}(-[0-9]{2}){2} [0-9]{2}:[0-9]{2} [A-Z].*"),
        out.toString());
  }

  @Test
  void aTestThatSaysNothingIsSaidToOnce() throws IOException {
    String file = recorded("crank_good_avg");
    String answers = "--answers=" + answers(ANSWERS.replace("R-77", "R-78"));
    assertEquals(0, run("measure", file, "--tag=T-2", answers, shop), err.toString());
    assertEquals(0, run("decide", "T-2", shop), err.toString());
    String row = out.toString().lines().filter(l -> l.startsWith("PENDING")).findFirst().orElse("");
    assertEquals(2, row.split("nothing about the unit", -1).length, row);
    assertTrue(row.contains("below 9.000 V"), row);
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
}
