package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.measures.Figures;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What a bench can do that not every bench can: as its open instruments say it, or before it is
 * opened its description and dialects.
 *
 * @param pulses whether its load pulses by itself
 * @param swings whether its source puts a sine on its level by itself
 * @param most_Hz fastest rate of its digitizer, samples a second and channel
 * @param channels that it samples
 * @param needs what its digitizer's line must carry for a framing, bytes a second
 * @param carries what that line carries, bytes a second
 */
public record Abilities(
    boolean pulses,
    boolean swings,
    double most_Hz,
    int channels,
    ToDoubleFunction<Framing> needs,
    double carries) {

  /** Of an open bench. */
  static Abilities of(RunPlan plan, BenchInstruments bench) {
    Digitizer digitizer = bench.digitizer();
    return new Abilities(
        bench.load().canPulse(),
        bench.source().canSwing(),
        digitizer.most_Hz(),
        digitizer.channels().size(),
        framing -> digitizer.bytesPerSecond(framing.rate_Hz(), framing.samples()),
        plan.bench().instrument(digitizer.role()).map(Connection::bytesPerSecond).orElse(0.0));
  }

  /**
   * The steps that this bench leaves out, by id in the order of the profile, and why: the end of a
   * sentence.
   */
  public Map<String, String> leaves(Profile profile) {
    Map<String, String> why = new LinkedHashMap<>();
    for (Step step : profile.steps()) {
      StepKinds.of(step.kind()).cannot(step, this).ifPresent(w -> why.put(step.id(), w));
    }
    return why;
  }

  /** What of its steps this bench leaves out though it does the rest, by id, each a sentence. */
  public Map<String, List<String>> leavesInPart(Profile profile) {
    Map<String, List<String>> without = new LinkedHashMap<>();
    for (Step step : profile.steps()) {
      List<String> lacks = StepKinds.of(step.kind()).without(step, this);
      if (!lacks.isEmpty() && StepKinds.of(step.kind()).cannot(step, this).isEmpty()) {
        without.put(step.id(), lacks);
      }
    }
    return without;
  }

  /** A digitizer or a line that is too slow for one step may well do for the rest. */
  Optional<String> tooSlow(Step step) {
    return step.detail()
        .sampleRate_Hz()
        .map(rate_Hz -> Framing.of(rate_Hz.intValue(), channels))
        .filter(f -> f.rate_Hz() > most_Hz || needs.applyAsDouble(f) > carries)
        .map(
            f ->
                "the digitizer of this bench or its line does not take "
                    + Figures.number(f.rate_Hz(), 0)
                    + " samples a second");
  }
}
