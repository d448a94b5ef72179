package corewright.station.work;

import corewright.bench.capture.ReadProgress;
import corewright.bench.capture.Recording;
import corewright.bench.capture.csv.Overrides;
import corewright.bench.diagnose.Diagnostician;
import corewright.bench.diagnose.Letter;
import corewright.bench.diagnose.Priors;
import corewright.bench.judge.Judge;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.Descriptions;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Measures a recorded file and judges it, where a family says what is good. Keeps no record. */
public final class MeasureFile {
  private final Catalogue catalogue;

  public MeasureFile(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * What is asked for.
   *
   * @param family id of the unit's family
   * @param profile file of the profile that the record is held against; the family's default one
   *     where only a family is named
   * @param nominal_V nominal output where no family says it, or against what it says
   * @param settle_s not judged after each load edge, s; the profile's or the meter's where empty
   * @param guard_s not judged before the next edge, s; likewise
   * @param known what else is known of the record
   */
  public record Request(
      Path file,
      Optional<String> family,
      Optional<Path> profile,
      Optional<Double> nominal_V,
      Optional<Double> settle_s,
      Optional<Double> guard_s,
      Known known) {}

  /**
   * What some readings need beside the record.
   *
   * @param calibration what is known of the channels that recorded it, or the whole bench
   * @param band_V recovery band of the reader's own, V
   * @param bandwidth_Hz bandwidth that ripple is stated in as well
   * @param switching_Hz the converter's frequency; the family's where empty
   * @param discharge_ohm what the output is discharged through while nothing feeds it
   * @param overrides what a person says of a text record's columns
   */
  public record Known(
      Optional<Path> calibration,
      Optional<Double> band_V,
      Optional<Double> bandwidth_Hz,
      Optional<Double> switching_Hz,
      Optional<Double> discharge_ohm,
      Overrides overrides) {}

  /**
   * What came of it.
   *
   * @param settings as it was measured with
   * @param judgement empty where no family says what is good
   * @param diagnosis what the readings are consistent with; empty likewise
   */
  public record Result(
      Recording recording,
      MeterSettings settings,
      MeasuredRun run,
      Optional<Family> family,
      Optional<Profile> profile,
      Optional<Judgement> judgement,
      Optional<Diagnosis> diagnosis) {

    /** What a customer can be told of it; empty where no family says what is good. */
    public Optional<String> finding() {
      return judgement.flatMap(j -> diagnosis.map(d -> Letter.finding(run, j, d)));
    }
  }

  /**
   * Reads, measures, judges.
   *
   * @throws corewright.files.BadFile if the record, family or profile cannot be used
   * @throws Refused if the profile is another family's
   */
  public Result measure(Request request) {
    return measure(request, ReadProgress.UNSEEN);
  }

  /**
   * The same.
   *
   * @param progress told how far a long record has been read
   */
  public Result measure(Request request, ReadProgress progress) {
    Optional<Profile> named = request.profile().map(catalogue::readProfile);
    Optional<Family> family =
        request.family().or(() -> named.map(Profile::family)).map(catalogue::family);
    Optional<Profile> profile = named.or(() -> family.map(catalogue::defaultProfile));
    if (profile.isPresent() && !profile.get().family().equals(family.orElseThrow().id())) {
      throw new Refused(
          "Profile "
              + profile.get().id()
              + " is for family "
              + profile.get().family()
              + ", not "
              + family.get().id(),
          "Name a profile of the unit's own family, or leave --family out.");
    }
    Recording recording = Recording.read(request.file(), progress, request.known().overrides());
    Known known = request.known();
    MeterSettings settings =
        new MeterSettings(
                request.settle_s().or(() -> profile.flatMap(Profile::settle_s)),
                request.guard_s().or(() -> profile.flatMap(Profile::guard_s)),
                request.nominal_V().or(() -> family.map(Family::output_V)),
                known
                    .calibration()
                    .map(Descriptions::calibration)
                    .map(c -> OwnChannels.of(c, recording))
                    .map(Assessing::doubts)
                    .orElse(Map.of()))
            .withCircuit(
                known.switching_Hz().or(() -> family.map(Family::switching_Hz)),
                known.discharge_ohm())
            .withBand(known.band_V())
            .withBandwidth(known.bandwidth_Hz());
    MeasuredRun run = RunMeter.read(recording.capture(), settings);
    double length_s = recording.capture().size() / recording.capture().sampleRate_Hz();
    RunEnd end = recording.end().orElse(RunEnd.completed(length_s));
    Optional<Judgement> judgement =
        family.map(f -> Judge.judge(run, f, profile.orElseThrow(), end));
    return new Result(
        recording,
        settings,
        run,
        family,
        profile,
        judgement,
        judgement.map(
            j ->
                Diagnostician.diagnose(
                    run, family.orElseThrow(), profile.orElseThrow(), j, Priors.ofTrade())));
  }
}
