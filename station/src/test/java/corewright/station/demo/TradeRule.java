package corewright.station.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.bench.record.Verdict;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import corewright.station.work.Outcome;

/**
 * What the trade does with a core, without the decision table: a void test says nothing and is
 * repeated, what passed goes back or to stock, one marginal run is repeated, and a bad unit is
 * rebuilt where its build can be, replaced where it cannot, and kept with the question that would
 * tell as long as the build is not sure (common practice, no source).
 */
final class TradeRule {
  private TradeRule() {}

  static void check(Outcome o, Family family, Verdict verdict, String which) {
    Identification build = o.identification().orElseThrow();
    Decision decision = o.decision();
    assertEquals(disposition(build, family, verdict), decision.disposition(), which);
    if (decision.disposition() != Disposition.PENDING) {
      return;
    }
    assertTrue(decision.question().contains("?"), which + ": " + decision.question());
    assertTrue(decision.due().isPresent() && !decision.owner().isEmpty(), which);
    if (verdict == Verdict.FAIL) { // the build is what is not known: the next look at the unit
      assertTrue(
          family.cues().stream().map(Cue::question).anyMatch(decision.question()::equals),
          which + ": " + decision.question());
      assertEquals(build.nextQuestion(), decision.question(), which);
    }
  }

  private static Disposition disposition(Identification build, Family family, Verdict verdict) {
    return switch (verdict) {
      case VOID, INCOMPLETE, MARGINAL -> Disposition.PENDING;
      case PASS -> Disposition.RETURN;
      case FAIL, UNSAFE ->
          build.band() == Band.IDENTIFIED
              ? ofBuild(family.variant(build.variant()).orElseThrow())
              : Disposition.PENDING;
    };
  }

  private static Disposition ofBuild(Variant variant) {
    return switch (variant.serviceable()) {
      case YES -> Disposition.REBUILD;
      case NO -> Disposition.REPLACE;
      case CONDITIONAL -> Disposition.PENDING;
    };
  }
}
