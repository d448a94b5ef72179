package corewright.station.demo;

import static corewright.bench.record.Finding.Outcome.FAIL;
import static corewright.bench.record.Finding.Outcome.MARGINAL;
import static corewright.bench.record.Finding.Outcome.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.Finding.Outcome;
import corewright.profiles.Catalogue;
import corewright.profiles.Limit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Near a limit the verdict flips where the limit is. One part of a unit is made worse until the
 * noise-free physics lies one U before an edge, and one U behind it (or half the marginal band,
 * where U is wider); on each side the station must say what the physics says. A plain build crosses
 * six edges, on shortened profiles; {@code -Dlimit.walks=all} every edge of every family, on whole
 * ones.
 */
class LimitWalkTest {
  private static final boolean ALL = System.getProperty("limit.walks", "").equals("all");

  static List<Walk> walks() {
    return ALL ? Walk.all() : Walk.few();
  }

  @ParameterizedTest
  @MethodSource("walks")
  void theVerdictFlipsWhereTheLimitIs(Walk walk) {
    Crossing crossing = new Crossing(walk, "arrival", ALL);
    double far = Math.min(crossing.at(0).expandedU(), crossing.band() / 2);
    expect(walk.edge().good(), crossing.at(far));
    expect(walk.edge().bad(), crossing.at(-far));
  }

  private static void expect(Outcome outcome, Crossing.Unit unit) {
    assertEquals(outcome, unit.asked(), "the physics itself");
    assertEquals(outcome, unit.said(), () -> "at " + unit.margin() + " from the edge");
    assertEquals(unit.askedVerdict(), unit.verdict(), "the verdict");
  }

  static Stream<Walk> guarded() {
    return walks().stream()
        .filter(w -> w.edge() == Walk.Edge.PASS)
        .filter(w -> Set.of("output-full", "ripple-rms", "undershoot-rest").contains(w.limit()))
        .filter(w -> ALL || w.limit().equals("output-full"));
  }

  /** Before shipping a good reading by half a U is not enough, a bad one by half a U no fail. */
  @ParameterizedTest
  @MethodSource("guarded")
  void theGuardBandMovesTheFlipByU(Walk walk) {
    Crossing crossing = new Crossing(walk, "ship", ALL);
    double u = crossing.at(0).expandedU();
    assertEquals(PASS, crossing.at(1.5 * u).said());
    assertEquals(MARGINAL, crossing.at(0.5 * u).said());
    assertEquals(MARGINAL, crossing.at(-0.5 * u).said());
    assertEquals(FAIL, crossing.at(-1.5 * u).said());
  }

  /** No limit of the demonstrated families is left out. */
  @Test
  void everyLimitIsWalked() {
    Set<String> limits = new TreeSet<>();
    for (String family : Walk.FAMILIES) {
      Catalogue.ofHome().profile(family + "-arrival").limits().stream()
          .map(Limit::id)
          .forEach(limits::add);
    }
    assertEquals(limits, new TreeSet<>(Walk.limits()));
  }
}
