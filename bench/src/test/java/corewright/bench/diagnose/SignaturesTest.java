package corewright.bench.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the trade says of each group must come out of the table, whatever was counted beside it. */
class SignaturesTest {

  @ParameterizedTest
  @EnumSource(Group.class)
  void theSharesOfATraitAddUpToOne(Group group) {
    for (Trait trait : Trait.values()) {
      double sum =
          Arrays.stream(Sign.values())
              .filter(s -> s.trait() == trait)
              .mapToDouble(s -> Signatures.of(group, s))
              .sum();
      assertEquals(1, sum, 0.02, group + " " + trait);
    }
  }

  /** Common practice, no source: each mark with the group that shows it most. */
  @ParameterizedTest
  @EnumSource(
      value = Sign.class,
      names = {
        "RIPPLE_HIGH",
        "FREQUENCY_HALF",
        "REST_THROUGH",
        "REST_ABSENT",
        "REST_HIGH",
        "LINE_LOST_AT_REST",
        "SHAPE_CYCLES",
        "SHAPE_JUMPS",
        "RINGING_MUCH",
        "SUBHARMONIC_MUCH",
        "DEAD_INPUT_SHORT",
        "DEAD_OUTPUT_SHORT",
        "BEHIND_LIMIT_INPUT_DOWN",
        "BEHIND_LIMIT_OUTPUT_DOWN"
      })
  void eachMarkBelongsToItsGroup(Sign sign) {
    Group most =
        Arrays.stream(Group.values())
            .max((a, b) -> Double.compare(Signatures.of(a, sign), Signatures.of(b, sign)))
            .orElseThrow();
    Group expected =
        switch (sign) {
          case RIPPLE_HIGH -> Group.OUTPUT_ESR;
          case FREQUENCY_HALF -> Group.DEAD_PHASE;
          case REST_THROUGH -> Group.NOT_SWITCHING;
          case REST_ABSENT -> Group.NO_PATH;
          case REST_HIGH -> Group.FEEDBACK;
          case LINE_LOST_AT_REST -> Group.LOCK_OUT;
          case SHAPE_CYCLES -> Group.RESTART;
          case SHAPE_JUMPS -> Group.JOINT;
          case RINGING_MUCH, SUBHARMONIC_MUCH -> Group.LOOP;
          case DEAD_INPUT_SHORT, BEHIND_LIMIT_INPUT_DOWN -> Group.INPUT_SHORT;
          default -> Group.OUTPUT_SHORT;
        };
    assertEquals(expected, most, sign.name());
  }

  @ParameterizedTest
  @EnumSource(Group.class)
  void theNextMeasurementIsASentenceForEveryPair(Group group) {
    for (Group rival : Group.values()) {
      if (rival != group) {
        String next = Separation.between(group, rival);
        assertTrue(next.endsWith("."), next);
        boolean own =
            next.equals(group.check()) && Separation.between(rival, group).equals(rival.check());
        assertTrue(
            own || next.equals(Separation.between(rival, group)), "the same whichever leads");
      }
    }
  }
}
