package corewright.bench.run;

import corewright.bench.record.RunEnd;
import corewright.profiles.Step;
import java.util.Optional;

/** Nothing on: the unit must be without charge, and stay so with the resistor lifted. */
final class DeadCheck implements StepKind {
  /** Shorter than this nothing could be seen to rise. */
  private static final double LEAST_S = 1;

  @Override
  public double usual_s(Step step, RunPlan plan) {
    return Math.max(LEAST_S, step.hold_s());
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(step.hold_s() + plan.family().discharge().within_s());
  }

  @Override
  public void run(Step step, Station station) {
    DischargeProof proof = station.proof();
    Optional<String> charged =
        proof
            .falls()
            .or(
                () -> {
                  HoldOn.letGo(station.context().bench());
                  return proof.stays(Math.max(LEAST_S, step.hold_s()));
                });
    charged.ifPresent(
        saw -> {
          throw new EndOfRun(
              new RunEnd(
                  RunEnd.Kind.REFUSED_TO_POWER,
                  step.id(),
                  station.sampler().at_s(),
                  saw,
                  "Treat the unit as charged: check the discharge path, then discharge it by"
                      + " hand."));
        });
    station.aids().beforePower().ifPresent(meter -> meter.look(station));
  }
}
