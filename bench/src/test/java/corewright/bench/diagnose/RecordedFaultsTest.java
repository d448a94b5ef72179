package corewright.bench.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.capture.Recording;
import corewright.bench.judge.Judge;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunEnd;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The recorded waveforms: made by a circuit simulator, with the fault that their name says ({@code
 * fixtures/captures/README.md}). None of them was used to count the signatures.
 */
class RecordedFaultsTest {

  @ParameterizedTest
  @CsvSource({
    "high_esr_sw, ref48-switching, OUTPUT_ESR",
    "high_esr_sw, ref48-steady, OUTPUT_ESR",
    "cap_loss_sw, ref48-switching, OUTPUT_CAPACITANCE",
    "cap_loss_sw, ref48-steady, OUTPUT_CAPACITANCE",
    "ilim_low_avg, ref48-steady, POWER_STAGE_WEAK",
    "hiccup_avg, ref48-steady, RESTART",
    "dead_avg, ref48-steady, NO_PATH",
    "healthy_sw, ref48-switching, ",
    "healthy_avg, ref48-steady, ",
    "healthy_avg_noisy12, ref48-steady, ",
    "input_sag_avg, ref48-steady, ",
    "crank_good_avg, ref48-crank, ",
    "crank_good_avg, ref48-steady, ",
  })
  void theGroupIsTheOneThatWasMadeFaulty(String record, String profileId, String group) {
    Catalogue catalogue = Catalogue.ofHome();
    Profile profile = catalogue.profile(profileId);
    Family family = catalogue.family(profile.family());
    MeasuredRun run =
        RunMeter.read(
            Recording.read(file(record)).capture(),
            new MeterSettings(
                profile.settle_s(), profile.guard_s(), Optional.of(family.output_V()), Map.of()));
    Judgement judgement = Judge.judge(run, family, profile, RunEnd.completed(0));
    Diagnosis diagnosis = Diagnostician.diagnose(run, family, profile, judgement);
    assertEquals(
        Optional.ofNullable(group),
        diagnosis.named().map(Candidate::group),
        diagnosis.candidates().toString());
    assertEquals(group == null, diagnosis.candidates().isEmpty());
    assertFalse(diagnosis.excluded().isEmpty(), "what comes before the unit is said first");
    diagnosis.candidates().stream()
        .limit(1)
        .forEach(c -> assertTrue(!c.evidenceFor().isEmpty() && c.next().endsWith(".")));
  }

  private static Path file(String record) {
    Path folder = Path.of(System.getProperty("corewright.home"), "fixtures", "captures", record);
    Path packed = folder.resolve("capture.csv.gz");
    return Files.exists(packed) ? packed : folder.resolve("capture.csv");
  }
}
