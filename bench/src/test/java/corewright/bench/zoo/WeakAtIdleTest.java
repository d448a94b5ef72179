package corewright.bench.zoo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Finding;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.profiles.SlowPulses;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A converter with a tenth of its power left holds 48.1 V at the rate of a cranked engine and falls
 * to 37.6 V at the rate of an idling one (common practice, no source): a cranking alone passes it.
 * What the output comes to follows from the energy that the coil is given in each period, which
 * nothing that measures knows.
 */
class WeakAtIdleTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();
  private static final double RATED_W = 130;
  private static final double LEFT = 0.1;
  private static final double INPUT_V = 12.5;

  /** Of the rated pulses: longer than the output may lie below its abort limit. */
  private static final double RATED_S = 0.7;

  private static final double IDLE_S = 0.8;

  private final UnitParameters healthy = UnitParameters.healthy("sd48");

  @Test
  void itHoldsWhileCrankedAndCollapsesAtIdle() {
    Profile whole = CATALOGUE.profile("sd48-full");
    Set<String> kept = Set.of("dead", "first-power", "rest", "pulses", "discharge");
    Profile profile =
        whole.withSteps(
            whole.steps().stream()
                .filter(s -> kept.contains(s.id()))
                .map(s -> s.kind() == Step.Kind.PULSES ? longer(s) : s)
                .toList());
    ZooBench.Judged judged = new ZooBench(CATALOGUE).inMemory(Setup.of(weak(), 3), profile);
    MeasuredRun run = judged.run();

    // 4 mC at 48 V, 27 a second: 5.2 W of the 13 W that are left.
    assertEquals(48.1, read(run, Quantity.PULSED_OUTPUT_CRANKING), 0.5);
    assertEquals(Finding.Outcome.PASS, outcome(judged, "pulsed-output-cranking"));
    double settle_s = profile.settle_s().orElseThrow();
    double idle_V = read(run, Quantity.PULSED_OUTPUT_IDLE);
    assertEquals(balanced(93, settle_s, IDLE_S), idle_V, 0.5);
    assertEquals(37.6, balanced(93, 2, 3), 0.5, "where the trade sees it settle");
    assertEquals(Finding.Outcome.FAIL, outcome(judged, "pulsed-output-idle"));
    assertTrue(read(run, Quantity.PULSED_DIP_IDLE) < 2.6, "its capacitors are as they were");

    // What was read before the rated rate ended the run is not lost.
    assertEquals(RunEnd.Trip.OUTPUT_UNDER, judged.end().trip(), judged.end().saw());
    assertEquals(
        Reading.none("the run ended before this step was over."),
        run.reading(Quantity.PULSED_OUTPUT));
    assertEquals(Optional.of(Verdict.FAIL), judged.judgement().verdict());
  }

  /** Its switch is on for so little of each period that a tenth of the rated power passes. */
  private UnitParameters weak() {
    double nominal_V = healthy.get(Parameter.NOMINAL);
    double most = Math.sqrt(LEFT * RATED_W / nominal_V / diode_A(nominal_V, 1));
    return healthy.with(Parameter.DUTY_MAX, most);
  }

  /**
   * What the diode passes on: the coil is charged to U·D·T/L in each period, and discharges that
   * energy, and what flows meanwhile, into the output (a boost converter whose current is over
   * before the next period).
   */
  private double diode_A(double output_V, double duty) {
    double period_s = healthy.get(Parameter.PERIOD);
    double peak_A = INPUT_V * duty * period_s / healthy.get(Parameter.INDUCTANCE);
    double energy_J = healthy.get(Parameter.INDUCTANCE) * peak_A * peak_A / 2;
    double back_V = output_V + healthy.get(Parameter.DIODE_DROP) - INPUT_V;
    return energy_J / back_V / period_s;
  }

  /** The mean of the output between two times, followed from its set-point; V. */
  private double balanced(double rate_Hz, double from_s, double to_s) {
    double duty = weak().get(Parameter.DUTY_MAX);
    double step_s = 1e-4;
    double output_V = healthy.get(Parameter.NOMINAL);
    double sum = 0;
    int n = 0;
    for (double t = 0; t < to_s; t += step_s) {
      double taken_A = 10 * 0.4e-3 * rate_Hz + output_V / healthy.get(Parameter.BLEED);
      double more_V = (diode_A(output_V, duty) - taken_A) * step_s;
      output_V += more_V / healthy.get(Parameter.CAPACITANCE);
      if (t >= from_s) {
        sum += output_V;
        n++;
      }
    }
    return sum / n;
  }

  /** Sampled more slowly: capacitance and resistance are not asked for here. */
  private static Step longer(Step s) {
    Step.Pulses p = s.detail().pulses().orElseThrow();
    List<Step.Slower> slower =
        p.slower().stream()
            .map(r -> r.at() == SlowPulses.IDLE ? new Step.Slower(r.at(), r.rate_Hz(), IDLE_S) : r)
            .toList();
    Step.Detail detail =
        new Step.Detail(
            Optional.of(125e3),
            0,
            0,
            List.of(),
            1,
            Optional.empty(),
            false,
            Optional.of(new Step.Pulses(p.high_A(), p.width_s(), p.rate_Hz(), slower)));
    return new Step(
        s.id(),
        s.kind(),
        s.title(),
        s.input_V(),
        s.inputLimit_A(),
        s.load_A(),
        RATED_S,
        s.judged(),
        detail);
  }

  private static double read(MeasuredRun run, Quantity quantity) {
    Measurement m = run.reading(quantity).measurement().orElseThrow();
    return m.value();
  }

  private static Finding.Outcome outcome(ZooBench.Judged judged, String limit) {
    return judged.judgement().findings().stream()
        .filter(f -> f.limit().id().equals(limit))
        .findFirst()
        .orElseThrow()
        .outcome();
  }
}
