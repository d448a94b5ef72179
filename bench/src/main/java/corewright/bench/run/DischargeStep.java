package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;

/** Everything off, and proof that the unit holds no charge any more. */
final class DischargeStep implements StepKind {
  /** Open-circuit wait before the last look (common practice, no source). */
  static final double OPEN_S = 10;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return OPEN_S + plan.family().discharge().within_s() / 2;
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(OPEN_S + plan.family().discharge().within_s());
  }

  @Override
  public void run(Step step, Station station) {
    List<String> troubles = SafeState.take(station.context().bench());
    station.sampler().wayOut();
    station.sampler().step(step.id(), step.kind().name(), most_s(step, station.context().plan()));
    station.levels().forget();
    DischargeProof proof = station.proof();
    Optional<String> charged = proof.falls().or(() -> proof.stays(OPEN_S));
    Optional<String> fed = station.aids().decay().fed();
    troubles.stream()
        .findFirst()
        .or(() -> charged.map(saw -> saw + fed.map(more -> " " + more).orElse("")))
        .or(() -> fed)
        .or(() -> station.aids().decay().tooSlow())
        .or(() -> station.aids().witness().contradicts(station))
        .or(() -> station.aids().witness().lacks(station))
        .or(() -> SourceLeft.on(station.context().bench().source(), station.levels().most_V()))
        .ifPresent(
            saw -> {
              throw new EndOfRun(
                  new RunEnd(
                      RunEnd.Kind.BENCH_FAULT,
                      step.id(),
                      station.sampler().at_s(),
                      saw,
                      "Treat the unit as charged: check the discharge path, then discharge it by"
                          + " hand."));
            });
  }
}
