package corewright.bench.triage;

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
}
