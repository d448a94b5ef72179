package corewright.station.work;

import corewright.bench.judge.Judge;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.ChannelDoubt;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** How a capture is read and judged, the same for a run on the bench and an imported file. */
public final class Assessing {
  private Assessing() {}

  /**
   * How a capture is read: windows of the profile, doubts of the channels that recorded it.
   *
   * @param channels empty: not calibrated
   */
  public static MeterSettings settings(
      Family family,
      Profile profile,
      List<ChannelCalibration> channels,
      Optional<Double> settle_s,
      Optional<Double> guard_s) {
    return new MeterSettings(
            settle_s.or(profile::settle_s),
            guard_s.or(profile::guard_s),
            Optional.of(family.output_V()),
            doubts(channels))
        .withCircuit(Optional.of(family.switching_Hz()), Optional.empty());
  }

  /** What the meter takes of a calibration. */
  static Map<String, ChannelDoubt> doubts(List<ChannelCalibration> channels) {
    return channels.stream()
        .collect(
            Collectors.toMap(
                ChannelCalibration::channel, c -> new ChannelDoubt(c.gain_rel(), c.offset())));
  }

  /**
   * Judges what was measured; where nothing was, how the run ended still says something. A run that
   * was begun under another family's profile has no limits to be judged by, and can yet be closed.
   *
   * @param reference what the bench's reference units showed
   */
  public static Judgement judge(
      Optional<MeasuredRun> measured,
      Family family,
      Profile profile,
      RunEnd end,
      List<String> reference) {
    if (!profile.family().equals(family.id())) {
      Verdict none = end.kind() == RunEnd.Kind.BENCH_FAULT ? Verdict.VOID : Verdict.INCOMPLETE;
      return new Judgement(
          Optional.of(none), Optional.empty(), "", List.of(), List.of(end.saw(), end.remedy()));
    }
    return Judge.judge(measured.orElseGet(() -> nothing(profile)), family, profile, end, reference);
  }

  /** No hold was measured. */
  static MeasuredRun nothing(Profile profile) {
    return new MeasuredRun(
        profile.sampleRate_Hz(), 0, "nothing was sampled", List.of(), Map.of(), List.of());
  }
}
