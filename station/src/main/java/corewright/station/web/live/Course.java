package corewright.station.web.live;

import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.ChannelDoubt;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a run is going to do, as a screen shows it: its steps, what of each is judged, the floor
 * that each has, the zones of the input.
 *
 * @param channels what is known of the bench's channels
 */
record Course(Family family, Profile profile, List<ChannelCalibration> channels) {
  private static final int MOST_COLUMNS = 200_000;
  private static final int MS_PER_S = 1000;
  private static final double DEFAULT_SETTLE_S = 0.5;
  private static final double DEFAULT_GUARD_S = 0.02;
  private static final double DISCHARGE_S = 15;

  /** Running the output down before a start, s: about twice its time constant. */
  private static final double START_S = 2;

  Course {
    channels = List.copyOf(channels);
  }

  /** The feed that the input lane shows. */
  String feed() {
    return profile.feeds().get(0).name();
  }

  InputZones zones() {
    return profile.feeds().get(0).zones();
  }

  Step step(int index) {
    return profile.steps().get(index);
  }

  /** How long a step usually takes, s. */
  double usual_s(Step step) {
    return switch (step.kind()) {
      case DEAD_CHECK -> Math.max(1, step.hold_s());
      case FIRST_POWER, HOLD, QUIESCENT, HIGH_LINE, BURST, THERMAL, DECAY -> step.hold_s();
      case PULSES -> step.hold_s() + step.detail().pulses().orElseThrow().slower_s();
      case START -> step.hold_s() + START_S;
      case LINES, CRANK, SURVIVAL ->
          step.detail().repeats()
                  * step.detail().levels().stream().mapToDouble(Step.Level::hold_s).sum()
              + (step.detail().repeats() - 1) * step.detail().rest_s();
      case LOCK_OUT -> 2 * (step.input_V() - step.detail().to_V()) / step.detail().ramp_VperS();
      case FALLING -> (step.input_V() - step.detail().to_V()) / step.detail().ramp_VperS();
      case BY_HAND -> 0;
      case DISCHARGE -> DISCHARGE_S;
    };
  }

  /** Not judged after the hold begins, s. */
  double settle_s() {
    return profile.settle_s().orElse(Math.min(DEFAULT_SETTLE_S, shortest_s() / 5));
  }

  /** Not judged before it ends, s. */
  double guard_s() {
    return profile.guard_s().orElse(Math.min(DEFAULT_GUARD_S, shortest_s() / 100));
  }

  private double shortest_s() {
    return profile.steps().stream()
        .filter(s -> s.kind() == Step.Kind.HOLD)
        .mapToDouble(Step::hold_s)
        .min()
        .orElse(1);
  }

  static boolean isJudged(Step step) {
    return step.kind() == Step.Kind.HOLD && step.judged();
  }

  /** What the output must not fall through in a step; empty where nothing is asked of it. */
  Optional<Limit> floor(Step step) {
    if (!isJudged(step)) {
      return Optional.empty();
    }
    return profile.limits().stream()
        .filter(l -> l.quantity() == Quantity.OUTPUT && l.side() == Limit.Side.AT_LEAST)
        .filter(l -> l.edge().isEmpty() && l.appliesTo(step.load_A()))
        .filter(l -> step.hold_s() >= l.fromHold_s())
        .max(Comparator.comparing(Limit::headline).thenComparing(Limit::pass));
  }

  /** What is known of a channel; empty where its calibration is not described. */
  Optional<ChannelDoubt> doubt(String channel) {
    return channels.stream()
        .filter(c -> c.channel().equals(channel))
        .map(c -> new ChannelDoubt(c.gain_rel(), c.offset()))
        .findFirst();
  }

  /** How long a column is so that the whole run is kept in little memory, ms; one at least. */
  int column_ms() {
    double all_s = profile.steps().stream().mapToDouble(this::usual_s).sum();
    double slowest_ms = MS_PER_S / Math.min(MS_PER_S, profile.sampleRate_Hz());
    return (int) Math.ceil(Math.max(slowest_ms, Math.max(1, all_s * MS_PER_S / MOST_COLUMNS)));
  }
}
