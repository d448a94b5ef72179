package corewright.bench.zoo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Finding;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The whole sequence, from the dead check to the discharge: of one family in each build, of all
 * with {@code -Dfull.families=sd48,ie110,pv65}.
 */
class FullSequenceTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();
  private static final Set<String> ALWAYS =
      Set.of("dead", "first-power", "rest", "half", "discharge");

  /** Nobody entered these, and the profile may be judged without them. */
  private static final Set<String> BY_HAND = Set.of("pins", "insulation", "key-off");

  private final ZooBench bench = new ZooBench(CATALOGUE);

  private ZooBench.Judged run(UnitParameters unit) {
    return bench.inMemory(Setup.of(unit, 3), CATALOGUE.profile(unit.family() + "-full"));
  }

  static Stream<String> families() {
    return Stream.of(System.getProperty("full.families", "pv65").split(","));
  }

  @ParameterizedTest
  @MethodSource("families")
  void aHealthyUnitPassesAndEveryLimitWasAsked(String family) {
    ZooBench.Judged judged = run(UnitParameters.healthy(family));
    assertEquals(RunEnd.Kind.COMPLETED, judged.end().kind(), judged.end().saw());
    assertEquals(
        Optional.of(Verdict.PASS),
        judged.judgement().verdict(),
        judged.judgement().reasons().toString());
    Set<String> asked =
        judged.judgement().findings().stream()
            .filter(f -> f.measurement().isPresent())
            .map(f -> f.limit().id())
            .collect(Collectors.toSet());
    CATALOGUE.profile(family + "-full").limits().stream()
        .filter(l -> !BY_HAND.contains(l.id()))
        .forEach(l -> assertTrue(asked.contains(l.id()), l.id()));
  }

  /** What no hold shows: each is seen by the one step that is there for it. */
  @ParameterizedTest
  @CsvSource({
    "sd48, LOCK_OUT_ON, 9.4, LOCK_OUT, hysteresis-most",
    "ie110, QUIESCENT, 0.25, QUIESCENT, no-load-most",
    "pv65, SOFT_START, 0.01, START, start-rise-fast",
    "sd48, CAPACITANCE, 0.0011, PULSES, pulsed-capacitance",
  })
  void whatAStepIsThereForFails(
      String family, Parameter parameter, double value, Step.Kind kind, String limit) {
    Profile whole = CATALOGUE.profile(family + "-full");
    Profile fewer = with(whole, kind);
    ZooBench.Judged judged =
        bench.inMemory(Setup.of(UnitParameters.healthy(family).with(parameter, value), 3), fewer);
    assertEquals(
        Set.of(limit),
        judged.judgement().findings().stream()
            .filter(f -> f.outcome() == Finding.Outcome.FAIL)
            .map(f -> f.limit().id())
            .filter(id -> id.equals(limit))
            .collect(Collectors.toSet()),
        judged.judgement().reasons().toString());
    assertEquals(
        Optional.of(Verdict.FAIL),
        judged.judgement().verdict(),
        judged.judgement().reasons().toString());
  }

  private static Profile with(Profile p, Step.Kind kept) {
    return new Profile(
        p.id(),
        p.revision(),
        p.family(),
        p.title(),
        p.purpose(),
        p.sampleRate_Hz(),
        p.settle_s(),
        p.guard_s(),
        p.feeds(),
        p.supplyDrops(),
        p.provingLoad_A(),
        p.steps().stream().filter(s -> s.kind() == kept || ALWAYS.contains(s.id())).toList(),
        p.limits(),
        p.temperature_C(),
        p.temperatureTolerance_K(),
        p.origin());
  }
}
