package corewright.bench.judge;

import static corewright.bench.judge.Invented.OUTPUT_FULL;
import static corewright.bench.judge.Invented.hold;
import static corewright.bench.judge.Invented.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Catalogue;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Profile.Purpose;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of what goes in must come out again, at half and three quarters of the load. */
class EfficiencyTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();

  /** The least of the trade for each design (common practice, no source), asked where it is. */
  @ParameterizedTest
  @CsvSource({"sd48, 78", "ie110, 72", "pv65, 76"})
  void theWholeSequencesAskForWhatTheTradeAsks(String family, double least) {
    for (String which : List.of("-full", "-final")) {
      Profile profile = CATALOGUE.profile(family + which);
      Limit limit = limits(profile).get(0);
      assertEquals(least, limit.pass(), profile.id());
      assertEquals(
          which.equals("-final"), limit.pass() == limit.fail(), "a ship limit has no band");
      assertEquals(
          List.of("half", "low-half", "low-three-quarters", "three-quarters"),
          profile.steps().stream()
              .filter(s -> s.kind() == Step.Kind.HOLD)
              .filter(s -> s.load_A() >= limit.from_A() && s.load_A() <= limit.to_A())
              .map(Step::id)
              .sorted()
              .collect(Collectors.toList()));
    }
    for (String quick : List.of("-arrival", "-ship")) {
      assertEquals(List.of(), limits(CATALOGUE.profile(family + quick)), "needs no input current");
    }
  }

  private static List<Limit> limits(Profile profile) {
    return profile.limits().stream().filter(l -> l.quantity() == Quantity.EFFICIENCY).toList();
  }

  private static final Limit LEAST =
      new Limit(
          "efficiency", Quantity.EFFICIENCY, Limit.Side.AT_LEAST, 78, 72, 2, 4, false, "invented");

  /** A bench that does not sample the input current passes nothing on this, and says why. */
  @Test
  void withoutAnInputCurrentItIsNotMeasuredAndNoPass() {
    Judgement judged = judge(Reading.none("the input current was not recorded"));
    Finding finding =
        judged.findings().stream().filter(f -> f.limit() == LEAST).findFirst().orElseThrow();
    assertEquals(Finding.Outcome.NOT_MEASURED, finding.outcome());
    assertEquals("the input current was not recorded", finding.note());
    assertEquals(Optional.of(Verdict.INCOMPLETE), judged.verdict());
    assertTrue(
        judged.reasons().toString().contains("the input current was not recorded"),
        judged.reasons().toString());
  }

  @Test
  void whatIsLostInTheConverterFailsAUnitWhoseOutputHolds() {
    assertEquals(Optional.of(Verdict.PASS), judge(Reading.of(78.4, 0.3, Unit.PERCENT)).verdict());
    assertEquals(Optional.of(Verdict.FAIL), judge(Reading.of(71.6, 0.3, Unit.PERCENT)).verdict());
  }

  private static Judgement judge(Reading efficiency) {
    return Judge.judge(
        run(hold(0, 48, 12.5), hold(3, 47.9, 12.4).with(Quantity.EFFICIENCY, efficiency)),
        Invented.family(),
        Invented.profile(Purpose.ARRIVAL, OUTPUT_FULL, LEAST),
        RunEnd.completed(8));
  }
}
