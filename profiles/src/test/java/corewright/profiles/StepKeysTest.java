package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Quantity;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Common practice, no source: a reading has one origin. A limit is left open with the step that
 * need not be there; were its reading another step's too, which must be there, that one's limit
 * would be lost.
 */
class StepKeysTest {
  @Test
  void noReadingComesOfTwoKindsOfStep() {
    Set<Quantity> seen = StepKeys.BY_HAND.stream().collect(Collectors.toSet());
    for (Step.Kind kind : Step.Kind.values()) {
      for (Quantity quantity : StepKeys.of(kind).yields()) {
        assertTrue(seen.add(quantity), kind + " " + quantity);
      }
    }
  }

  /** What is entered for a step that a bench cannot do is one of that step's own readings. */
  @Test
  void whatIsEnteredForAKindIsItsOwn() {
    Stream<Step.Kind> foreign =
        Arrays.stream(Step.Kind.values())
            .filter(
                kind ->
                    StepKeys.of(kind).byHand().stream()
                        .anyMatch(q -> !StepKeys.of(kind).yields().contains(q)));
    assertEquals(Set.of(), foreign.collect(Collectors.toSet()));
  }
}
