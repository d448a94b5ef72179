package corewright.reports;

import corewright.bench.judge.Judge;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.files.Origin;
import corewright.measures.Capture;
import corewright.measures.ChannelDoubt;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.chart.Evidence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Runs of {@link Waves}, read by the real meter and judged by the real judge, with their curves.
 */
public final class SampleRuns implements Evidence {
  private final Map<String, Capture> captures = new HashMap<>();
  private String calibration = "not calibrated";
  private int meters;

  /** Runs from now on are made with so many meters beside load and digitizer. */
  public void equipped(int more) {
    meters = more;
  }

  /** Runs from now on are made with a digitizer that was calibrated so, as a bench file says it. */
  public void calibrated(String certificate) {
    calibration = certificate;
  }

  /** A run that went to its end. */
  public RunRecord run(
      String id, String tag, Capture capture, Profile.Purpose purpose, Source source) {
    return run(id, tag, Optional.of(capture), purpose, source, RunEnd.completed(Waves.end_s()));
  }

  /** Any run; without a capture nothing was measured. */
  public RunRecord run(
      String id,
      String tag,
      Optional<Capture> capture,
      Profile.Purpose purpose,
      Source source,
      RunEnd end) {
    capture.ifPresent(c -> captures.put(id, c));
    MeterSettings settings =
        new MeterSettings(
            Optional.empty(),
            Optional.empty(),
            Optional.of(48.0),
            Map.of(
                "output", new ChannelDoubt(3e-4, 0.045),
                "load", new ChannelDoubt(1e-3, 0.002),
                "input", new ChannelDoubt(5e-4, 0.01)));
    Optional<MeasuredRun> measured = capture.map(c -> RunMeter.read(c, settings));
    Family family = SampleFamily.family();
    Profile profile = SampleFamily.profile(purpose);
    Judgement judgement =
        Judge.judge(
            measured.orElse(new MeasuredRun(1, 0, "", List.of(), Map.of(), List.of())),
            family,
            profile,
            end);
    return new RunRecord(
        id,
        tag,
        purpose.name().toLowerCase(Locale.ROOT),
        1,
        source,
        Samples.MORNING.plusSeconds(600),
        Samples.MORNING.plusSeconds(640),
        "H. Oduya",
        "bench-1",
        "fixture-sd48-1",
        profile.id(),
        profile.revision(),
        profile.origin(),
        family.origin(),
        Optional.<Origin>empty(),
        equipment(),
        "corewright 1.0.0",
        "captures/" + id + ".h5",
        "ab".repeat(32),
        end,
        List.of(),
        measured,
        judgement);
  }

  private List<EquipmentUsed> equipment() {
    List<EquipmentUsed> all = new ArrayList<>();
    all.add(new EquipmentUsed("load", "Corewright,Emulated load,0,1", "not calibrated"));
    all.add(new EquipmentUsed("digitizer", "Corewright,Emulated digitizer,0,1", calibration));
    for (int i = 0; i < meters; i++) {
      all.add(new EquipmentUsed("meter", "Corewright,Emulated meter,0,1", "not calibrated"));
    }
    return all;
  }

  @Override
  public Optional<Capture> capture(RunRecord run) {
    return Optional.ofNullable(captures.get(run.id()));
  }

  @Override
  public Optional<Family> family(RunRecord run) {
    return Optional.of(SampleFamily.family());
  }

  @Override
  public Optional<Profile> profile(RunRecord run) {
    return Optional.of(
        SampleFamily.profile(Profile.Purpose.valueOf(run.purpose().toUpperCase(Locale.ROOT))));
  }
}
