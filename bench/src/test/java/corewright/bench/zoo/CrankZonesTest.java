package corewright.bench.zoo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Quantity;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A whole run that cranks the unit, from the bytes on the wire to the verdict, with the input in
 * each zone of the trade: 10 V and above is good, 9 to 10 V is tolerated and only a pass counts,
 * below 9 V nothing is said (common practice, no source).
 */
class CrankZonesTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();

  /** Its limit suffices for half the load at 12.5 V, and does not where the input is low. */
  private static final double SHORT_OF_POWER = 0.45;

  private final ZooBench bench = new ZooBench(CATALOGUE);

  @ParameterizedTest
  @CsvSource({
    "10.35, weak, , VALID, FAIL",
    "9.50, sound, , TOLERATED, PASS",
    "8.80, sound, , VOID, VOID",
    "10.35, weak, WEAK_LEADS, TOLERATED, VOID"
  })
  void theVerdictFollowsTheInput(
      double plateau_V, String unit, BenchFault leads, Qualifier zone, Verdict verdict) {
    UnitParameters sound = UnitParameters.healthy("sd48");
    Setup setup =
        Setup.of(
            unit.equals("weak") ? sound.times(Parameter.CURRENT_LIMIT, SHORT_OF_POWER) : sound, 3);
    ZooBench.Judged judged =
        bench.inMemory(
            leads == null ? setup : setup.on(leads.in(setup.harness(), 0.25)), cranked(plateau_V));
    assertEquals(RunEnd.Kind.COMPLETED, judged.end().kind(), judged.end().saw());
    String why = judged.run().reading(Quantity.CRANK_INPUT) + " " + judged.judgement().reasons();
    assertEquals(Optional.of(zone), judged.judgement().qualifier(), why);
    assertEquals(Optional.of(verdict), judged.judgement().verdict(), why);
  }

  /** The family's own cranking with its events and the starter's swing, once, at this plateau. */
  private static Profile cranked(double plateau_V) {
    Profile p = CATALOGUE.profile("sd48-full");
    Set<String> kept = Set.of("dead", "first-power", "rest", "half", "crank", "discharge");
    return p.withSampleRate(20_000)
        .withSteps(
            p.steps().stream()
                .filter(s -> kept.contains(s.id()))
                .map(s -> s.kind() == Step.Kind.CRANK ? once(s, plateau_V) : s)
                .toList())
        .withLimits(
            p.limits().stream()
                .filter(l -> Set.of("output-part", "output-rest", "crank-output").contains(l.id()))
                .toList());
  }

  /** What leads there and away is looked at by nobody. */
  private static Step.Level shorter(Step.Level l) {
    return new Step.Level(l.input_V(), Math.min(l.hold_s(), 0.05), l.judged());
  }

  private static Step.Level at(double plateau_V, Step.Level l) {
    return new Step.Level(plateau_V, l.hold_s(), l.judged(), l.swing());
  }

  private static Step once(Step s, double plateau_V) {
    List<Step.Level> levels =
        s.detail().levels().stream()
            .map(l -> l.swing().isPresent() ? at(plateau_V, l) : shorter(l))
            .toList();
    return new Step(
        s.id(),
        s.kind(),
        s.title(),
        s.input_V(),
        s.inputLimit_A(),
        s.load_A(),
        s.hold_s(),
        s.judged(),
        new Step.Detail(
            s.detail().sampleRate_Hz(),
            0,
            0,
            levels,
            1,
            Optional.empty(),
            true,
            s.detail().pulses()));
  }
}
