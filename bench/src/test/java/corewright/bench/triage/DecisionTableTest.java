package corewright.bench.triage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One case for each row, and no row without one. */
class DecisionTableTest {
  private static final LocalDate TODAY = LocalDate.of(2024, 2, 28);

  /** What differs from {@link Space#PLAIN}. */
  static final Map<String, String> WITNESSES = new LinkedHashMap<>();

  static {
    WITNESSES.put("D10", "Lock=DISPUTED");
    WITNESSES.put("D11", "Safety=CHARGED");
    WITNESSES.put("D12", "Safety=WET");
    WITNESSES.put("D13", "Safety=FORBIDDEN");
    WITNESSES.put("D15", "Identity=FOREIGN");
    WITNESSES.put("D20", "Identity=UNCERTAIN");
    WITNESSES.put("D30", "Evidence=VOID_INPUT");
    WITNESSES.put("D31", "Evidence=VOID_BENCH");
    WITNESSES.put("D32", "Evidence=INCOMPLETE");
    WITNESSES.put("D33", "Evidence=NONE");
    WITNESSES.put("D40", "Evidence=PASS Coverage=TEMPERATURE_OPEN");
    WITNESSES.put("D41", "Evidence=PASS Coverage=SOAK_OPEN");
    WITNESSES.put("D42", "Evidence=PASS Preventive=WANTED");
    WITNESSES.put("D43", "Evidence=PASS Claim=REPEATED Approval=NOT_ASKED");
    WITNESSES.put("D44", "Evidence=PASS Claim=REPEATED");
    WITNESSES.put("D45", "Evidence=PASS Claim=FIRST");
    WITNESSES.put("D46", "Evidence=PASS");
    WITNESSES.put("D47", "Evidence=PASS Mode=STOCK");
    WITNESSES.put("D50", "Evidence=MARGINAL");
    WITNESSES.put("D55", "Identity=PROBABLE Candidates=DIFFER");
    WITNESSES.put("D57", "Approval=DECLINED");
    WITNESSES.put("D58", "Approval=SILENT");
    WITNESSES.put("D59", "Mode=TEST_ONLY");
    WITNESSES.put("D60", "Rebuildable=NO Mode=STOCK");
    WITNESSES.put("D61", "Rebuildable=NO Economy=NEITHER_PAYS");
    WITNESSES.put("D62", "Rebuildable=NO Data=PAIRED Approval=NOT_ASKED");
    WITNESSES.put("D63", "Rebuildable=NO Approval=NOT_ASKED");
    WITNESSES.put("D66", "Cause=UNCORRECTED");
    WITNESSES.put("D67", "Rebuildable=NO");
    WITNESSES.put("D68", "Condition=DAMAGED Economy=REPLACE_PAYS Approval=NOT_ASKED");
    WITNESSES.put("D69", "Condition=DAMAGED Economy=REPLACE_PAYS");
    WITNESSES.put("D70", "Condition=DAMAGED Economy=REPLACE_PAYS Mode=STOCK");
    WITNESSES.put("D74", "Rebuildable=FAULT_UNKNOWN");
    WITNESSES.put("D76", "Approval=NOT_ASKED");
    WITNESSES.put("D78", "NextTest=WORTH");
    WITNESSES.put("D80", "Evidence=UNSAFE");
    WITNESSES.put("D81", "");
    WITNESSES.put("D82", "Evidence=MARGINAL_CONFIRMED");
    WITNESSES.put("D83", "Parts=EXCHANGE_AGREED");
    WITNESSES.put("D84", "Parts=MISSING");
    WITNESSES.put("D86", "Economy=REPLACE_PAYS Mode=STOCK");
    WITNESSES.put("D87", "Economy=REPLACE_PAYS");
    WITNESSES.put("D88", "Economy=NEITHER_PAYS");
    WITNESSES.put("D99", "Condition=DAMAGED Evidence=NONE");
  }

  @Test
  void everyRowDecidesItsOwnCaseAndNoRowIsWithoutOne() {
    assertEquals(
        DecisionTable.ROWS.stream().map(Row::id).toList(), List.copyOf(WITNESSES.keySet()));
    WITNESSES.forEach(
        (row, inputs) -> assertEquals(row, Triage.row(Space.plainBut(inputs)).id(), inputs));
  }

  /** Without its row a witness would meet another end: no row is there for nothing. */
  @Test
  void noRowCouldBeLeftOut() {
    List<Row> all = DecisionTable.ROWS;
    for (Row row : all.subList(0, all.size() - 1)) {
      Case witness = Space.plainBut(WITNESSES.get(row.id()));
      Row next =
          all.stream().filter(r -> r != row && r.when().test(witness)).findFirst().orElseThrow();
      assertNotEquals(end(row), end(next), row.id() + " and " + next.id());
    }
  }

  @Test
  void pendingNamesQuestionOwnerAndDayAndNothingElseDoes() {
    for (String inputs : WITNESSES.values()) {
      Decision decision = Triage.decide(Space.plainBut(inputs), Facts.NONE, TODAY);
      boolean pending = decision.disposition() == Disposition.PENDING;
      assertEquals(pending, !decision.question().isEmpty(), decision.row());
      assertEquals(pending, !decision.owner().isEmpty(), decision.row());
      assertEquals(pending, decision.due().filter(TODAY::isBefore).isPresent(), decision.row());
      assertEquals(pending, decision.destination().isEmpty(), decision.row());
      assertFalse(decision.sentence().isEmpty(), decision.row());
      assertEquals(17, decision.saw().size(), "every input is kept");
    }
  }

  @Test
  void theDueDayIsCountedFromTheDayThatIsHandedIn() {
    Decision decision = Triage.decide(Space.plainBut("Evidence=VOID_INPUT"), Facts.NONE, TODAY);
    assertEquals(LocalDate.of(2024, 3, 1), decision.due().orElseThrow(), "2024 has a 29 February");
  }

  @Test
  void theDecisionQuotesTheReadingsThenTheBuildThenTheSums() {
    Facts facts =
        new Facts(
            "",
            List.of("Output fell to 43.28 ± 0.02 V at 3.00 A; the limit is 46.50 V."),
            List.of("Build A3."),
            "",
            "its converter is set in hard resin",
            "",
            Optional.empty(),
            List.of("A rebuild brings −104 EUR."));
    Decision decision = Triage.decide(Space.plainBut("Rebuildable=NO"), facts, TODAY);
    assertEquals(
        "Output fell to 43.28 ± 0.02 V at 3.00 A; the limit is 46.50 V. This build cannot be"
            + " rebuilt: its converter is set in hard resin. It is replaced by an exchange unit.",
        decision.sentence());
    assertEquals(3, decision.reasons().size());
    assertTrue(decision.reasons().get(0).startsWith("Output fell"));
    assertEquals("NO", decision.saw().get("Rebuildable"));
  }

  @Test
  void whereTheBuildIsOpenTheNextQuestionIsTheOneThatIdentifiesIt() {
    Facts facts =
        new Facts(
            "",
            List.of(),
            List.of(),
            "How many bosses has the housing?",
            "",
            "",
            Optional.empty(),
            List.of());
    Decision decision = Triage.decide(Space.plainBut("Identity=UNCERTAIN"), facts, TODAY);
    assertEquals("How many bosses has the housing?", decision.question());
  }

  private static String end(Row row) {
    return row.disposition()
        + row.destination()
        + row.owner()
        + row.question().apply(Facts.NONE)
        + row.sentence().apply(Facts.NONE);
  }
}
