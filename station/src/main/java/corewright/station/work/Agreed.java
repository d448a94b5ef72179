package corewright.station.work;

import corewright.bench.triage.Custody;
import corewright.bench.triage.Custody.Condition;
import corewright.bench.triage.Custody.Lock;
import corewright.bench.triage.Custody.Safety;
import corewright.bench.triage.Means;
import corewright.bench.triage.Means.Economy;
import corewright.bench.triage.Means.NextTest;
import corewright.bench.triage.Means.Parts;
import corewright.bench.triage.Means.Preventive;
import corewright.bench.triage.Proof.Coverage;
import corewright.bench.triage.Terms;
import corewright.bench.triage.Terms.Approval;
import corewright.bench.triage.Terms.Cause;
import corewright.bench.triage.Terms.Claim;
import corewright.bench.triage.Terms.Data;
import corewright.bench.triage.Terms.Mode;
import java.util.Locale;
import java.util.Map;

/**
 * What was agreed and what the shop has, in the words of the decision table. What nobody said is
 * taken as the plainest answer, except approval: an approval that nobody gave was not given.
 *
 * @param words by name, as the answers file writes them
 */
record Agreed(Map<String, String> words) {
  private static final String FOREIGN = "foreign";

  Custody custody(Safety safety, Condition seen) {
    return new Custody(
        word("lock", Lock.FREE, Lock.class), safety, word("condition", seen, Condition.class));
  }

  Terms terms(String mode) {
    return new Terms(
        Mode.of(mode),
        word("claim", Claim.NONE, Claim.class),
        word("data", Data.NONE, Data.class),
        word("cause", Cause.NONE, Cause.class),
        word("approval", Approval.NOT_ASKED, Approval.class));
  }

  Means means(Economy economy, NextTest nextTest) {
    return new Means(
        economy,
        nextTest,
        word("parts", Parts.IN_STOCK, Parts.class),
        word("preventive", Preventive.NOT_WANTED, Preventive.class));
  }

  /** What was tried; where nobody said, what the runs themselves leave open. */
  Coverage coverage(Coverage unsaid) {
    return word("coverage", unsaid, Coverage.class);
  }

  /** A person found that it is none of the shop's kind. */
  boolean foreign() {
    return "yes".equals(words.get(FOREIGN));
  }

  private <E extends Enum<E>> E word(String name, E plain, Class<E> kind) {
    String said = words.get(name);
    return said == null
        ? plain
        : Enum.valueOf(kind, said.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }
}
