package corewright.bench.zoo;

import corewright.bench.record.RunEnd;
import corewright.bench.record.RunEnd.Trip;
import corewright.fixtures.emulate.unit.Channel;
import corewright.fixtures.emulate.unit.Circuit;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.Sampler;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Capture;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An emulated unit on a bench without wires: the profile's holds are played into the physics, which
 * is sampled, and the abort limits are watched. For counting many units in little time; what is
 * counted is then tried on whole runs.
 */
final class DirectPlay {
  private static final double WATCH_S = 0.001;

  private final Family family;
  private final Profile profile;
  private final Harness harness;
  private final Sampler sampler;
  private final Circuit circuit;

  private final short[][] codes;
  private int filled;
  private double under_s;
  private double over_s;

  private DirectPlay(
      UnitParameters unit, Harness harness, Family family, Profile profile, long seed) {
    this.family = family;
    this.profile = profile;
    this.harness = harness;
    circuit = new Circuit(unit, harness.supply());
    sampler = new Sampler(unit, circuit, harness, seed);
    double all_s = holds(profile).stream().mapToDouble(Step::hold_s).sum();
    codes = new short[Sampler.CHANNELS][(int) Math.round(all_s * profile.sampleRate_Hz()) + 100];
  }

  /** What was measured, and how the run ended. */
  record Played(MeasuredRun run, RunEnd end) {}

  /** Plays the holds of a profile. */
  static Played play(
      UnitParameters unit, Harness harness, Family family, Profile profile, long seed) {
    return new DirectPlay(unit, harness, family, profile, seed).play(unit);
  }

  static List<Step> holds(Profile profile) {
    return profile.steps().stream().filter(s -> s.kind() == Step.Kind.HOLD).toList();
  }

  private Played play(UnitParameters unit) {
    List<Step> holds = holds(profile);
    Step first = holds.get(0);
    circuit.source(first.input_V(), first.inputLimit_A());
    circuit.relay(true);
    circuit.sourceOutput(true);
    sampler.pass(0.5 + 3 * unit.get(Parameter.SOFT_START));
    RunEnd end = RunEnd.completed(0);
    for (Step hold : holds) {
      Optional<RunEnd> tripped = hold(hold);
      if (tripped.isPresent()) {
        end = tripped.get();
        break;
      }
    }
    MeterSettings settings =
        new MeterSettings(
            profile.settle_s(), profile.guard_s(), Optional.of(family.output_V()), Map.of());
    return new Played(RunMeter.read(capture(), settings), end);
  }

  private Optional<RunEnd> hold(Step hold) {
    circuit.source(hold.input_V(), hold.inputLimit_A());
    circuit.load(harness.loadGain() * hold.load_A());
    int left = (int) Math.round(hold.hold_s() * profile.sampleRate_Hz());
    int frame = (int) Math.max(1, Math.round(WATCH_S * profile.sampleRate_Hz()));
    while (left > 0) {
      int n = Math.min(frame, left);
      sampler.sample(1 / profile.sampleRate_Hz(), codes, filled, n);
      filled += n;
      left -= n;
      Optional<Trip> trip = watch(hold, n / profile.sampleRate_Hz());
      if (trip.isPresent()) {
        return Optional.of(
            RunEnd.tripped(
                trip.get(),
                hold.id(),
                filled / profile.sampleRate_Hz(),
                "The output or the supply current went beyond its abort limit.",
                ""));
      }
    }
    return Optional.empty();
  }

  private Optional<Trip> watch(Step hold, double seconds) {
    double output_V = circuit.output_V();
    boolean loaded = hold.load_A() > 0;
    under_s = loaded && output_V < family.abort().outputUnder_V() ? under_s + seconds : 0;
    over_s = circuit.source_A() > family.abort().inputOver_A() ? over_s + seconds : 0;
    if (output_V > family.abort().outputOver_V()) {
      return Optional.of(Trip.OUTPUT_OVER);
    }
    if (over_s > family.abort().inputOver_s()) {
      return Optional.of(Trip.SUPPLY_CURRENT_OVER);
    }
    return under_s > family.abort().underHold_s()
        ? Optional.of(Trip.OUTPUT_UNDER)
        : Optional.empty();
  }

  private Capture capture() {
    return new Capture(
        profile.sampleRate_Hz(),
        wave(1, Unit.VOLT),
        Optional.of(wave(2, Unit.AMPERE)),
        List.of(new Capture.Feed("input", wave(0, Unit.VOLT))),
        Optional.of(wave(3, Unit.AMPERE)),
        List.of());
  }

  private Waveform wave(int channel, Unit unit) {
    List<Channel> channels = harness.channels();
    short[] source = Arrays.copyOf(codes[channel], filled);
    int[] wide = new int[filled];
    for (int i = 0; i < filled; i++) {
      wide[i] = source[i];
    }
    return Waveform.ofCodes(wide, channels.get(channel).lsb(), 0, unit);
  }
}
