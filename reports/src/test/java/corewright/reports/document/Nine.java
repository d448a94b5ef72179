package corewright.reports.document;

import corewright.bench.life.ClaimClass;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.measures.Capture;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import corewright.reports.document.genuine.TestKey;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The nine documents that a shop hands out, about invented units, always the same. */
final class Nine {
  static final String TAG = "U-00418Q";

  /** A record whose text, and so whose code, no rounding of a computer changes. */
  static final KeptRecord RECORD =
      new KeptRecord() {
        @Override
        public String head() {
          return "bench-1:1042:9f86d081884c7d65";
        }

        @Override
        public String text(Object part) {
          return "{\"dossier\": {}}";
        }
      };

  private static final List<String> DONE =
      List.of(
          "Output capacitors C1 to C4, whole bank, lot 2644-K", "Cover gasket and vent membrane");

  private final SampleRuns runs = new SampleRuns();
  private final Documents documents;
  private final Dossier arrived;
  private final Dossier rebuilt;
  private final Dossier voided;
  private final ClaimCase claim;

  Nine(Shop shop) {
    documents =
        new Documents(
            shop,
            runs,
            Clock.fixed(Samples.MORNING, ZoneOffset.UTC),
            RECORD,
            Optional.of(new TestKey()));
    RunRecord weak = run("a", Waves.weak(), Purpose.ARRIVAL);
    RunRecord good = run("b", Waves.good(), Purpose.SHIP);
    RunRecord back = run("c", Waves.marginal(), Purpose.CLAIM);
    arrived = Dossiers.of(List.of(weak), Dossiers.rebuild(), List.of());
    rebuilt = Dossiers.of(List.of(weak, good), Dossiers.rebuild(), DONE);
    RunRecord sagging = run("d", Waves.sagging(), Purpose.ARRIVAL);
    voided = Dossiers.of(List.of(sagging), Samples.pending(), List.of());
    claim =
        new ClaimCase(
            Dossiers.of(List.of(back), Samples.pending(), List.of()),
            1,
            "dies when hot",
            "26 November 2027",
            Optional.of(weak),
            good,
            Optional.of(back),
            Optional.of(ClaimClass.W3),
            Optional.of(ClaimClass.W3.usual()),
            "C51",
            List.of("photo 3f2a: channel 3 burnt", "seal 0417 intact"),
            "");
  }

  /** What they are made from. */
  List<Dossier> dossiers() {
    return List.of(arrived, rebuilt, claim.now(), voided);
  }

  Documents documents() {
    return documents;
  }

  Dossier rebuilt() {
    return rebuilt;
  }

  /** Of a unit about which its test says nothing. */
  Dossier voided() {
    return voided;
  }

  /** Writes all of them, by their names. */
  Map<String, Path> write(Path folder) {
    Map<String, Path> files = new LinkedHashMap<>();
    files.put("certificate", documents.certificate(rebuilt, folder));
    files.put("warranty-report", documents.warrantyReport(rebuilt, folder));
    files.put("claim-report", documents.claimReport(claim, folder));
    files.put("letter", documents.letter(arrived, folder));
    files.put("core-tag", documents.coreTag(arrived, Label.TALL, folder));
    files.put("unit-label", documents.unitLabel(rebuilt, Label.WIDE, folder));
    files.put("mark-sheet", documents.markSheet(rebuilt, folder));
    files.put("traveller", documents.traveller(arrived, folder));
    files.put("install-sheet", documents.installSheet(rebuilt, folder));
    return files;
  }

  private RunRecord run(String id, Capture capture, Purpose purpose) {
    return runs.run(id, TAG, capture, purpose, Source.BENCH);
  }
}
