package corewright.bench.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.capture.csv.TextRecord;
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
 * The recorded waveforms, each with the verdict that its origin asks for: they were made by a
 * circuit simulator with the fault that their name says ({@code fixtures/captures/README.md}).
 */
class RecordedCapturesTest {

  @ParameterizedTest
  @CsvSource({
    "healthy_sw, ref48-switching, PASS, VALID",
    "healthy_avg, ref48-steady, PASS, VALID",
    "healthy_avg_noisy12, ref48-steady, PASS, VALID",
    "high_esr_sw, ref48-switching, FAIL, VALID",
    "cap_loss_sw, ref48-switching, FAIL, VALID",
    "ilim_low_avg, ref48-steady, FAIL, VALID",
    "hiccup_avg, ref48-steady, FAIL, VALID",
    "dead_avg, ref48-steady, FAIL, VALID",
    "input_sag_avg, ref48-steady, VOID, VOID",
    // the profile that is taken where none is named also fits the short holds
    "healthy_sw, ref48-steady, PASS, VALID",
    "high_esr_sw, ref48-steady, FAIL, VALID",
    "cap_loss_sw, ref48-steady, FAIL, VALID",
    "crank_good_avg, ref48-crank, PASS, VALID",
    "crank_good_avg, ref48-steady, VOID, VOID", // without its profile nobody dropped the supply
  })
  void eachRecordIsJudgedAsItWasMade(
      String record, String profileId, String verdict, String qualifier) {
    Catalogue catalogue = Catalogue.ofHome();
    Profile profile = catalogue.profile(profileId);
    Family family = catalogue.family(profile.family());
    MeasuredRun run =
        RunMeter.read(
            TextRecord.read(file(record)).capture(),
            new MeterSettings(
                profile.settle_s(), profile.guard_s(), Optional.of(family.output_V()), Map.of()));
    Judgement judged = Judge.judge(run, family, profile, RunEnd.completed(0));
    String saw = String.join("\n", judged.reasons());
    assertEquals(qualifier, judged.qualifier().map(Enum::name).orElse("none"), saw);
    assertEquals(verdict, judged.verdict().map(Enum::name).orElse("none"), saw);
  }

  private static Path file(String record) {
    Path folder = Path.of(System.getProperty("corewright.home"), "fixtures", "captures", record);
    Path packed = folder.resolve("capture.csv.gz");
    return Files.exists(packed) ? packed : folder.resolve("capture.csv");
  }
}
