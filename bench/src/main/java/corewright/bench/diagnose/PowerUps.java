package corewright.bench.diagnose;

import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.measures.Figures;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Signs from before the first hold: resistances without power, and where the terminals stand behind
 * the first power's small current limit. They are there whether or not the unit was let further.
 */
final class PowerUps {
  /** The input has come up when it is this near to what the source was told. */
  private static final double UP = 0.95;

  /** A diode that carries the limit's current drops more than this, V (common practice). */
  private static final double DIODE_LEAST_V = 0.3;

  /** A diode and what is in its way drop less than this, V. */
  private static final double DIODE_MOST_V = 2.5;

  private final MeasuredRun run;
  private final Family family;
  private final Profile profile;

  PowerUps(MeasuredRun run, Family family, Profile profile) {
    this.run = run;
    this.family = family;
    this.profile = profile;
  }

  Stream<Seen> seen(Judgement judgement) {
    return Stream.of(powerUp(judgement), deadInput(), deadOutput(), behindLimit())
        .flatMap(Optional::stream);
  }

  private Optional<Seen> powerUp(Judgement judgement) {
    if (!run.holds().isEmpty()) {
      return Optional.of(new Seen(Sign.POWER_UP_PASSED, "it could be powered"));
    }
    return judgement.verdict().filter(v -> v == Verdict.UNSAFE).isPresent()
        ? Optional.of(
            new Seen(
                Sign.POWER_UP_REFUSED,
                judgement.reasons().stream()
                    .findFirst()
                    .orElse("it could not be powered behind the small current limit")))
        : Optional.empty();
  }

  private Optional<Seen> deadInput() {
    return read(Quantity.DEAD_INPUT)
        .map(
            ohm ->
                new Seen(
                    ohm.value() < family.dead().input_ohm()
                        ? Sign.DEAD_INPUT_SHORT
                        : Sign.DEAD_INPUT_HIGH,
                    "without power there are " + Figures.withU(ohm) + " across the input"));
  }

  /** What would draw more than the rated load is a short; what draws less is a leak. */
  private Optional<Seen> deadOutput() {
    double rated_ohm = family.output_V() / family.ratedLoad_A();
    return read(Quantity.DEAD_OUTPUT)
        .map(
            ohm ->
                new Seen(
                    ohm.value() < rated_ohm
                        ? Sign.DEAD_OUTPUT_SHORT
                        : ohm.value() < family.dead().output_ohm()
                            ? Sign.DEAD_OUTPUT_LEAKS
                            : Sign.DEAD_OUTPUT_HIGH,
                    "without power there are " + Figures.withU(ohm) + " across the output"));
  }

  private Optional<Seen> behindLimit() {
    Optional<Measurement> in = read(Quantity.FIRST_POWER_INPUT);
    Optional<Measurement> out = read(Quantity.FIRST_POWER_OUTPUT);
    if (in.isEmpty() || out.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Seen(
            behindLimit(in.get().value(), out.get().value()),
            "behind the first power's current limit the input stands at "
                + Figures.withU(in.get())
                + " and the output at "
                + Figures.withU(out.get())));
  }

  private Sign behindLimit(double input_V, double output_V) {
    if (input_V > UP * told_V()) {
      return Sign.BEHIND_LIMIT_UP;
    }
    if (input_V < DIODE_LEAST_V) {
      return Sign.BEHIND_LIMIT_INPUT_DOWN;
    }
    if (output_V > input_V + DIODE_LEAST_V) {
      return Sign.BEHIND_LIMIT_BOOSTS;
    }
    return input_V < DIODE_MOST_V ? Sign.BEHIND_LIMIT_OUTPUT_DOWN : Sign.BEHIND_LIMIT_THROUGH;
  }

  private double told_V() {
    return profile.steps().stream()
        .filter(s -> s.kind() == Step.Kind.FIRST_POWER)
        .mapToDouble(Step::input_V)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private Optional<Measurement> read(Quantity quantity) {
    return run.reading(quantity).measurement();
  }
}
