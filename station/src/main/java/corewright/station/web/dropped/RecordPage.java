package corewright.station.web.dropped;

import corewright.bench.record.Judgement;
import corewright.bench.record.RunRecord;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.reports.chart.Numerals;
import corewright.station.web.did.Readings;
import corewright.station.work.MeasureFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A record that was dropped, measured: the sentence first, then findings and holds. */
public record RecordPage(
    String id,
    String name,
    String sentence,
    String form,
    List<String> reasons,
    String finding,
    List<Readings.Row> rows,
    String rule,
    List<Hold> holds,
    List<String> guesses,
    List<String> notes) {
  private static final List<Quantity> TOLD =
      List.of(
          Quantity.LOAD,
          Quantity.OUTPUT,
          Quantity.OUTPUT_MINIMUM,
          Quantity.INPUT,
          Quantity.DROOP,
          Quantity.RIPPLE_RMS,
          Quantity.DRIFT);

  /** One hold; {@code lines} are label and reading. */
  public record Hold(String title, List<LogPage.Line> lines) {}

  static RecordPage of(
      String id, String name, MeasureFile.Result result, RunRecord run, Numerals numerals) {
    Optional<Judgement> judged = result.judgement();
    List<String> reasons = judged.map(Judgement::reasons).orElse(List.of());
    return new RecordPage(
        id,
        name,
        judged
            .flatMap(j -> reasons.stream().findFirst())
            .orElse(
                "Measured, and not judged: no family was named, so nobody says what is good here."),
        judged.flatMap(Judgement::verdict).map(Enum::name).orElse(""),
        reasons.stream().skip(1).toList(), // the first is the sentence above
        result.finding().orElse(""),
        Readings.worst(run, numerals),
        judged.map(Judgement::decisionRule).orElse(""),
        result.run().holds().stream().map(RecordPage::hold).toList(),
        result.recording().guesses(),
        result.run().notes());
  }

  private static Hold hold(MeasuredHold hold) {
    List<LogPage.Line> lines = new ArrayList<>();
    for (Quantity quantity : TOLD) {
      if (hold.readings().get(quantity) instanceof Reading.Measured read) {
        lines.add(new LogPage.Line(quantity.title() + flags(read), Figures.withU(read.value())));
      }
    }
    return new Hold(
        "Hold "
            + (hold.index() + 1)
            + ", "
            + Figures.number(hold.start_s(), 3)
            + " to "
            + Figures.number(hold.end_s(), 3)
            + " s",
        lines);
  }

  private static String flags(Reading.Measured read) {
    return read.flags().isEmpty() ? "" : " (" + String.join("; ", read.flags()) + ")";
  }

  /** What the form asks of each column. */
  static List<Map.Entry<String, String>> asked() {
    return List.of(
        Map.entry("time", "Time"),
        Map.entry("output", "Output"),
        Map.entry("load", "Load current"),
        Map.entry("input", "Input"),
        Map.entry("inputCurrent", "Input current"));
  }
}
