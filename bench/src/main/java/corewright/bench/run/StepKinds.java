package corewright.bench.run;

import corewright.profiles.Step;
import java.util.Map;

/** Every kind of step that can be carried out. */
final class StepKinds {
  /** Which class carries out which kind. */
  static final Map<Step.Kind, StepKind> ALL =
      Map.ofEntries(
          Map.entry(Step.Kind.DEAD_CHECK, new DeadCheck()),
          Map.entry(Step.Kind.FIRST_POWER, new FirstPower()),
          Map.entry(Step.Kind.START, new StartStep()),
          Map.entry(Step.Kind.QUIESCENT, new Level()),
          Map.entry(Step.Kind.LINES, new LinesStep()),
          Map.entry(Step.Kind.LOCK_OUT, new LockOutStep()),
          Map.entry(Step.Kind.HOLD, new Hold()),
          Map.entry(Step.Kind.FALLING, new FallingStep()),
          Map.entry(Step.Kind.HIGH_LINE, new Level()),
          Map.entry(Step.Kind.CRANK, new CrankStep()),
          Map.entry(Step.Kind.SURVIVAL, new SurvivalStep()),
          Map.entry(Step.Kind.THERMAL, new ThermalStep()),
          Map.entry(Step.Kind.PULSES, new PulsesStep()),
          Map.entry(Step.Kind.BURST, new BurstStep()),
          Map.entry(Step.Kind.DECAY, new DecayStep()),
          Map.entry(Step.Kind.BY_HAND, new ByHandStep()),
          Map.entry(Step.Kind.DISCHARGE, new DischargeStep()));

  private StepKinds() {}

  /** The class that carries out a kind. */
  static StepKind of(Step.Kind kind) {
    StepKind known = ALL.get(kind);
    if (known == null) {
      throw new IllegalStateException("no class carries out a step of kind " + kind);
    }
    return known;
  }
}
