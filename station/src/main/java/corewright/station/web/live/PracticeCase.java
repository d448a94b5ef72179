package corewright.station.web.live;

import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.List;

/**
 * What a person who practises sees before and after they have said what they think.
 *
 * @param complaint the customer's words
 * @param end how the run ended
 * @param holds what was read in each hold
 * @param verdict what the station says, and why
 * @param disposition where the table sends it
 */
public record PracticeCase(
    String tag,
    String family,
    String complaint,
    String end,
    List<Row> holds,
    String verdict,
    List<String> reasons,
    String disposition) {

  public PracticeCase {
    holds = List.copyOf(holds);
    reasons = List.copyOf(reasons);
  }

  /** One hold, each reading with U (k = 2) or why there is none. */
  public record Row(String load, String output, String ripple, String input) {

    static Row of(MeasuredHold hold) {
      return new Row(
          shown(hold, Quantity.LOAD),
          shown(hold, Quantity.OUTPUT),
          shown(hold, Quantity.RIPPLE_PEAK_TO_PEAK),
          hold.feeds().stream()
              .findFirst()
              .flatMap(f -> f.lowestMedian().measurement())
              .map(Figures::withU)
              .orElse("–"));
    }

    private static String shown(MeasuredHold hold, Quantity quantity) {
      Reading reading = hold.readings().get(quantity);
      return reading == null ? "–" : reading.measurement().map(Figures::withU).orElse("–");
    }
  }

  static PracticeCase of(Dossier dossier, RunRecord run) {
    return new PracticeCase(
        dossier.core().tag(),
        dossier.core().family(),
        dossier.core().complaint(),
        run.end().saw(),
        run.measured().map(m -> m.holds().stream().map(Row::of).toList()).orElse(List.of()),
        run.judgement().verdict().map(Enum::name).orElse("none"),
        run.judgement().reasons(),
        dossier.decision().map(Decision::disposition).map(Enum::name).orElse("none"));
  }
}
