package corewright.reports;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.Past;
import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Units of the invented shop with what is known about them. */
public final class Dossiers {
  private Dossiers() {}

  public static Dossier of(List<RunRecord> runs, Decision decision, List<String> rebuild) {
    return of(Samples.core("U-00418Q", "SN 0698-114"), runs, decision, rebuild);
  }

  public static Dossier of(
      Core core, List<RunRecord> runs, Decision decision, List<String> rebuild) {
    return new Dossier(
        core,
        1,
        Samples.answers(),
        Optional.of(Samples.identification()),
        runs,
        Optional.of(decision),
        rebuild,
        new Past(rebuild.isEmpty() ? 0 : 1, List.of()));
  }

  public static Decision rebuild() {
    return decision(
        Disposition.REBUILD,
        "queue",
        "It fails under load and its build can be rebuilt.",
        List.of(
            "Build A2 is filled with soft gel.", "Rebuilding is worth 201 EUR, replacing 215."));
  }

  public static Decision giveBack() {
    return decision(
        Disposition.RETURN,
        "customer",
        "It met every limit at room temperature.",
        List.of("Before refitting, measure the voltage at its connector while cranking."));
  }

  public static Decision decision(
      Disposition disposition, String destination, String sentence, List<String> reasons) {
    return new Decision(
        "D64",
        2,
        disposition,
        destination,
        sentence,
        reasons,
        "",
        Optional.empty(),
        "",
        "",
        Optional.empty(),
        Map.of());
  }
}
