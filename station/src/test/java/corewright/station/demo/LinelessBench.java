package corewright.station.demo;

import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.unit.Channel;
import corewright.fixtures.emulate.unit.Circuit;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.Sampler;
import corewright.measures.Capture;
import corewright.measures.MeasuredRun;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.demo.DemoCore.OnTheBench;
import corewright.station.work.Assessing;
import java.util.List;
import java.util.Optional;

/**
 * The emulated bench without its serial lines: the holds of a profile are played into the unit,
 * sampled with the emulated digitizer's noise and steps, and measured and judged as the station
 * does. Nothing trips. For many units in little time.
 */
final class LinelessBench {
  private final Family family;
  private final Profile profile;
  private final BenchDescription bench;

  LinelessBench(Family family, Profile profile) {
    this.family = family;
    this.profile = profile;
    this.bench = Descriptions.shippedBench("emulated-" + family.id());
  }

  /** What the station reads and says of a unit. */
  record Seen(MeasuredRun run, Judgement judgement) {}

  Seen test(OnTheBench unit, long seed) {
    MeasuredRun run =
        RunMeter.read(
            sampled(unit, seed),
            Assessing.settings(
                family, profile, bench.channels(), Optional.empty(), Optional.empty()));
    RunEnd end = RunEnd.completed(run.samples() / run.sampleRate_Hz());
    return new Seen(run, Assessing.judge(Optional.of(run), family, profile, end, List.of()));
  }

  private Capture sampled(OnTheBench unit, long seed) {
    List<Step> holds = profile.steps().stream().filter(s -> s.kind() == Step.Kind.HOLD).toList();
    Circuit circuit = new Circuit(unit.unit(), unit.supply());
    Harness harness = Harness.sound(family.output_V()).with(unit.supply());
    circuit.loadSlew(harness.loadSlew_AperS(), harness.loadSlew_AperS());
    Sampler sampler = new Sampler(unit.unit(), circuit, harness, seed);
    circuit.source(holds.get(0).input_V(), holds.get(0).inputLimit_A());
    circuit.relay(true);
    circuit.sourceOutput(true);
    sampler.pass(0.5 + 3 * unit.unit().get(Parameter.SOFT_START));
    double rate_Hz = profile.sampleRate_Hz();
    int all = holds.stream().mapToInt(h -> samples(h, rate_Hz)).sum();
    short[][] codes = new short[Sampler.CHANNELS][all];
    int at = 0;
    for (Step hold : holds) {
      circuit.source(hold.input_V(), hold.inputLimit_A());
      circuit.load(hold.load_A());
      sampler.sample(1 / rate_Hz, codes, at, samples(hold, rate_Hz));
      at += samples(hold, rate_Hz);
    }
    List<Channel> channels = harness.channels();
    return new Capture(
        rate_Hz,
        wave(codes[1], channels.get(1), Unit.VOLT),
        Optional.of(wave(codes[2], channels.get(2), Unit.AMPERE)),
        List.of(new Capture.Feed("input", wave(codes[0], channels.get(0), Unit.VOLT))),
        Optional.of(wave(codes[3], channels.get(3), Unit.AMPERE)),
        List.of());
  }

  private static int samples(Step hold, double rate_Hz) {
    return (int) Math.round(hold.hold_s() * rate_Hz);
  }

  private static Waveform wave(short[] codes, Channel channel, Unit unit) {
    int[] wide = new int[codes.length];
    for (int i = 0; i < codes.length; i++) {
      wide[i] = codes[i];
    }
    return Waveform.ofCodes(wide, channel.lsb(), 0, unit);
  }
}
