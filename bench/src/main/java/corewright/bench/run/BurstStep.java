package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.measures.Figures;
import corewright.profiles.Step;
import java.util.Optional;

/** One load for a moment, sampled faster than anything else in the profile. */
final class BurstStep implements StepKind {

  /** A digitizer or a line that is too slow for it may well do for the rest. */
  @Override
  public Optional<String> cannot(Step step, RunContext context) {
    Digitizer digitizer = context.bench().digitizer();
    Framing framing =
        Framing.of(
            step.detail().sampleRate_Hz().orElseThrow().intValue(), digitizer.channels().size());
    double carries =
        context
            .plan()
            .bench()
            .instrument(digitizer.role())
            .map(Connection::bytesPerSecond)
            .orElse(0.0);
    boolean fits =
        framing.rate_Hz() <= digitizer.most_Hz()
            && digitizer.bytesPerSecond(framing.rate_Hz(), framing.samples()) <= carries;
    return fits
        ? Optional.empty()
        : Optional.of(
            "the digitizer of this bench or its line does not take "
                + Figures.number(framing.rate_Hz(), 0)
                + " samples a second");
  }

  /** The way there and back is as fast as the rest. */
  @Override
  public Optional<Double> rate_Hz(Step step) {
    return Optional.empty();
  }

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return 2 * BACK_S + step.hold_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    station.levels().to(step.input_V(), step.inputLimit_A(), step.load_A());
    ByHand.wait(step, station);
    station.sampler().watch(BACK_S);
    station.fast(step);
    station.back(step);
  }
}
