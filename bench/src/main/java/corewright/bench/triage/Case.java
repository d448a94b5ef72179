package corewright.bench.triage;

import corewright.bench.triage.Custody.Condition;
import corewright.bench.triage.Means.Economy;
import corewright.bench.triage.Means.Parts;
import corewright.bench.triage.Proof.Evidence;
import corewright.bench.triage.Terms.Approval;
import corewright.bench.triage.Terms.Claim;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Every input of the decision table, each one of a few values, so that the table can be tried on
 * all of them.
 */
public record Case(Custody custody, Build build, Proof proof, Terms terms, Means means) {

  /** Every input with its value, as a decision keeps them. */
  Map<String, String> inputs() {
    Map<String, String> inputs = new LinkedHashMap<>();
    for (Enum<?> value :
        new Enum<?>[] {
          custody.lock(),
          custody.safety(),
          custody.condition(),
          build.identity(),
          build.candidates(),
          build.rebuildable(),
          proof.evidence(),
          proof.coverage(),
          terms.mode(),
          terms.claim(),
          terms.data(),
          terms.cause(),
          terms.approval(),
          means.economy(),
          means.nextTest(),
          means.parts(),
          means.preventive()
        }) {
      inputs.put(value.getDeclaringClass().getSimpleName(), value.name());
    }
    return inputs;
  }

  boolean passed() {
    return proof.evidence() == Evidence.PASS;
  }

  /** It failed, in any way. */
  boolean bad() {
    return proof.evidence().bad();
  }

  boolean sound() {
    return custody.condition() == Condition.SOUND;
  }

  /** Its construction does not let it be rebuilt. */
  boolean closed() {
    return build.rebuildable().closed();
  }

  boolean rebuildPays() {
    return means.economy() == Economy.REBUILD_PAYS;
  }

  /** It has everything that a rebuild needs. */
  boolean ready() {
    return rebuildPays() && means.parts() == Parts.IN_STOCK && build.rebuildable().open();
  }

  boolean ours() {
    return terms.ours();
  }

  /** A claim before this one found nothing. */
  boolean again() {
    return terms.claim() == Claim.REPEATED;
  }

  boolean approved() {
    return terms.approval() == Approval.APPROVED;
  }

  boolean declined() {
    return terms.approval() == Approval.DECLINED;
  }
}
