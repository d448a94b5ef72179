package corewright.bench.triage;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What shall become of a unit: the first row of the decision table that applies. Pure. */
public final class Triage {
  private Triage() {}

  /**
   * Decides.
   *
   * @param today day from which a PENDING's due date counts
   */
  public static Decision decide(Case unit, Facts facts, LocalDate today) {
    Row row = row(unit);
    boolean open = row.disposition() == Disposition.PENDING;
    return new Decision(
        row.id(),
        DecisionTable.REVISION,
        row.disposition(),
        row.destination(),
        row.sentence().apply(facts),
        reasons(facts),
        facts.finding(),
        facts.diagnosis(),
        row.question().apply(facts),
        row.owner(),
        open ? Optional.of(today.plusDays(row.due_days())) : Optional.empty(),
        unit.inputs());
  }

  /** The rows of the table as it stands, by id, in the order in which they are asked. */
  public static List<String> rows() {
    return DecisionTable.ROWS.stream().map(Row::id).toList();
  }

  /** The revision of the table as it stands. */
  public static int revision() {
    return DecisionTable.REVISION;
  }

  static Row row(Case unit) {
    for (Row row : DecisionTable.ROWS) { // a plain loop: the whole space of cases is tried in tests
      if (row.when().test(unit)) {
        return row;
      }
    }
    throw new IllegalStateException("the last row of the decision table does not apply to all");
  }

  private static List<String> reasons(Facts facts) {
    return Stream.of(facts.evidence(), facts.identity(), facts.sums())
        .flatMap(List::stream)
        .toList();
  }
}
