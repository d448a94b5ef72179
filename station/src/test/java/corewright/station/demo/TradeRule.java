package corewright.station.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.bench.record.Verdict;
import corewright.profiles.Cue;
import corewright.profiles.Economics;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import corewright.station.work.Outcome;

/**
 * What the trade does with a core, without the decision table: a void test says nothing and is
 * repeated, what passed goes back or to stock, one marginal run is repeated, and a bad unit is
 * rebuilt where its build can be, replaced where it cannot, and kept with the question that would
 * tell as long as the build is not sure. Where no group of parts is named and a rebuild brings
 * hardly more than the next best way, a third of an hour of measuring comes first: it moves the
 * chance of success by a fifth, up or down (common practice, no source).
 */
final class TradeRule {
  private TradeRule() {}

  static void check(Outcome o, Family family, Verdict verdict, String which) {
    Identification build = o.identification().orElseThrow();
    Decision decision = o.decision();
    boolean measureFirst = isMeasuredFirst(build, family, verdict, decision);
    assertEquals(
        measureFirst ? Disposition.PENDING : disposition(build, family, verdict),
        decision.disposition(),
        which);
    if (decision.disposition() != Disposition.PENDING) {
      return;
    }
    assertTrue(decision.question().contains("?"), which + ": " + decision.question());
    assertTrue(decision.due().isPresent() && !decision.owner().isEmpty(), which);
    if (measureFirst) {
      String next = decision.diagnosis().orElseThrow().next().orElseThrow();
      assertTrue(decision.question().contains(next), which + ": " + decision.question());
    } else if (verdict
        == Verdict.FAIL) { // the build is what is not known: the next look at the unit
      assertTrue(
          family.cues().stream().map(Cue::question).anyMatch(decision.question()::equals),
          which + ": " + decision.question());
      assertEquals(build.nextQuestion(), decision.question(), which);
    }
  }

  private static boolean isMeasuredFirst(
      Identification build, Family family, Verdict verdict, Decision decision) {
    boolean bad = verdict == Verdict.FAIL || verdict == Verdict.UNSAFE;
    return bad
        && disposition(build, family, verdict) == Disposition.REBUILD
        && decision.diagnosis().filter(d -> !d.determined() && d.next().isPresent()).isPresent()
        && worthOfMeasuring(family.economics()) > 0;
  }

  private static double worthOfMeasuring(Economics e) {
    double spent = e.kit() + e.labour_h() * e.rate_perHour() + e.test();
    double good = e.sale() - e.warranty() - spent;
    double bad = e.harvest() - spent;
    double other =
        Math.max(
            e.exchange() - e.exchangeCost() + e.harvest() - e.warranty(),
            e.evaluation() - e.freight());
    double swing = Math.min(0.2, Math.min(e.yield(), 1 - e.yield()));
    double now = Math.max(other, bad + e.yield() * (good - bad));
    double up = Math.max(other, bad + (e.yield() + swing) * (good - bad));
    double down = Math.max(other, bad + (e.yield() - swing) * (good - bad));
    return (up + down) / 2 - now - e.rate_perHour() / 3;
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
