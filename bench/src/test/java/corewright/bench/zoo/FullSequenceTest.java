package corewright.bench.zoo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Finding;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
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
 * The whole sequence, from the dead check to the discharge: as one family arrives in each build; of
 * all families, as they arrive and as they leave, in {@code .ci/soak/sequence}.
 */
class FullSequenceTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();
  private static final Set<String> ALWAYS =
      Set.of("dead", "first-power", "rest", "half", "discharge");

  /** Nobody entered these, and the profile may be judged without them. */
  private static final Set<String> BY_HAND =
      Set.of(
          "pins",
          "insulation",
          "key-off",
          "tap",
          "cold",
          "cold-dip",
          "cold-esr",
          "hot",
          "hot-dip",
          "hot-key-off");

  private final ZooBench bench = new ZooBench(CATALOGUE);

  static Stream<String> profiles() {
    return Stream.of(System.getProperty("sequence.profiles", "pv65-full").split(","));
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void aHealthyUnitPassesAndEveryLimitWasAsked(String id) {
    Profile profile = CATALOGUE.profile(id);
    UnitParameters unit = UnitParameters.healthy(profile.family());
    ZooBench.Judged judged = bench.inMemory(Setup.of(unit, 3), profile);
    Sequenced.say(profile, judged);
    assertEquals(RunEnd.Kind.COMPLETED, judged.end().kind(), judged.end().saw());
    assertEquals(
        Optional.of(Verdict.PASS),
        judged.judgement().verdict(),
        judged.judgement().reasons().toString());
    // The input falls into the tolerated zone on purpose, and is not held against the run.
    assertEquals(Optional.of(Qualifier.VALID), judged.judgement().qualifier());
    Set<String> asked =
        judged.judgement().findings().stream()
            .filter(f -> f.measurement().isPresent())
            .map(f -> f.limit().id())
            .collect(Collectors.toSet());
    profile.limits().stream()
        .filter(l -> !BY_HAND.contains(l.id()))
        .forEach(l -> assertTrue(asked.contains(l.id()), l.id()));
    itsPartsAreReadAsTheyAre(unit, judged.run());
  }

  /** What the emulated unit is made of, which nothing that measures knows: within 3 u. */
  private static void itsPartsAreReadAsTheyAre(UnitParameters unit, MeasuredRun run) {
    within(unit.get(Parameter.CAPACITANCE), run, Quantity.PULSED_CAPACITANCE);
    within(unit.get(Parameter.ESR) + unit.get(Parameter.LEAD), run, Quantity.PULSED_ESR);
    within(unit.get(Parameter.LOCK_OUT_OFF), run, Quantity.LOCK_OUT_OFF);
    within(unit.get(Parameter.LOCK_OUT_ON), run, Quantity.LOCK_OUT_ON);
    within(1 / unit.get(Parameter.PERIOD), run, Quantity.BURST_FUNDAMENTAL);
    double bleeder_s = unit.get(Parameter.BLEED) * unit.get(Parameter.CAPACITANCE) * Math.log(2);
    double half_s = run.reading(Quantity.DECAY_HALF).measurement().orElseThrow().value();
    // The charge that the input's capacitor still gives after the feed is gone.
    assertEquals(1, half_s / bleeder_s, 0.02, "half after " + half_s + " s");
  }

  private static void within(double truth, MeasuredRun run, Quantity quantity) {
    Measurement read = run.reading(quantity).measurement().orElseThrow();
    assertEquals(truth, read.value(), read.expanded(3), quantity + " " + read);
  }

  /** What no hold shows: each is seen by the one step that is there for it. */
  @ParameterizedTest
  @CsvSource({
    "sd48, LOCK_OUT_ON, 9.4, LOCK_OUT, hysteresis-most",
    "ie110, QUIESCENT, 0.25, QUIESCENT, no-load-most",
    "pv65, SOFT_START, 0.01, START, start-rise-fast",
    "sd48, CAPACITANCE, 0.0011, PULSES, pulsed-capacitance",
    "pv65, SWITCHING_LOSS, 0.45, QUIESCENT, efficiency",
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
    // What each row is about is read at its step's own rate, or from levels alone.
    return p.withSampleRate(20_000)
        .withSteps(
            p.steps().stream().filter(s -> s.kind() == kept || ALWAYS.contains(s.id())).toList());
  }
}
