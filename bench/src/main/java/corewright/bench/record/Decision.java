package corewright.bench.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The row of the decision table that fired, with what it saw.
 *
 * @param row stable row id, as {@code D22}
 * @param tableRevision revision of the table that decided
 * @param disposition where the unit goes
 * @param destination {@code queue}, {@code exchange}, {@code stock}, {@code harvest}, {@code
 *     scrap}, {@code customer}; empty for PENDING
 * @param sentence the one sentence that a customer could be read
 * @param reasons the readings and answers behind it, most important first
 * @param finding what the customer can be told of the test itself, sentences; empty without one
 * @param diagnosis which groups of components the readings point at; empty without a test
 * @param question for PENDING: what would release it; empty otherwise
 * @param owner for PENDING: whose question it is; empty otherwise
 * @param due for PENDING: until when
 * @param saw every input of the table with the value it had
 */
public record Decision(
    String row,
    int tableRevision,
    Disposition disposition,
    String destination,
    String sentence,
    List<String> reasons,
    String finding,
    Optional<Diagnosis> diagnosis,
    String question,
    String owner,
    Optional<LocalDate> due,
    Map<String, String> saw) {

  public Decision {
    finding = Objects.requireNonNullElse(finding, ""); // decisions of before it was kept
    reasons = List.copyOf(reasons);
    saw = Map.copyOf(saw);
  }
}
