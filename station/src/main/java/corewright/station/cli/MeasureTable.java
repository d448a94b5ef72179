package corewright.station.cli;

import corewright.bench.record.Judgement;
import corewright.measures.FeedReadings;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.station.work.MeasureFile.Result;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The readings for people: hold by hold, each with unit and ± U (k = 2). */
final class MeasureTable {
  private static final int LABEL = 46;

  private final Result result;

  MeasureTable(Result result) {
    this.result = result;
  }

  void print(PrintWriter out) {
    MeasuredRun run = result.run();
    out.printf(
        Locale.ROOT,
        "%d samples, %s samples a second; ± is U with k = 2 (%s)%n",
        run.samples(),
        rate(run.sampleRate_Hz()),
        run.uBasis());
    run.holds().forEach(hold -> print(hold, out));
    out.println();
    print(run.readings(), out);
    run.notes().forEach(note -> out.println("Note: " + note));
    out.println();
    print(result.judgement().map(Judgement::reasons).orElse(List.of(MeasureJson.NO_FAMILY)), out);
  }

  private void print(List<String> reasons, PrintWriter out) {
    result
        .judgement()
        .ifPresent(
            judged -> {
              out.println(
                  "Input: " + judged.qualifier().map(MeasureTable::lower).orElse("not judged"));
              out.println(
                  "Verdict: "
                      + judged.verdict().map(Enum::name).orElse("none")
                      + " ("
                      + judged.decisionRule()
                      + ")");
            });
    reasons.forEach(out::println);
    result.diagnosis().map(DiagnosisWords::lines).orElse(List.of()).forEach(out::println);
    result.finding().ifPresent(words -> out.println("To the customer: " + words));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static String rate(double rate_Hz) {
    return rate_Hz == Math.rint(rate_Hz)
        ? String.valueOf((long) rate_Hz)
        : String.format(Locale.ROOT, "%.6g", rate_Hz);
  }

  private static void print(MeasuredHold hold, PrintWriter out) {
    out.printf(
        Locale.ROOT,
        "%nHold %d, %.6f s to %.6f s (judged from %.6f s to %.6f s)%n",
        hold.index(),
        hold.start_s(),
        hold.end_s(),
        hold.windowStart_s(),
        hold.windowEnd_s());
    print(hold.readings(), out);
    for (FeedReadings feed : hold.feeds()) {
      line("Lowest 1 ms median, " + feed.name(), feed.lowestMedian(), out);
    }
  }

  /** What was measured, line by line; then what was not, by the reason. */
  private static void print(Map<Quantity, Reading> readings, PrintWriter out) {
    Map<String, List<String>> none = new LinkedHashMap<>();
    for (Quantity quantity : Quantity.values()) {
      Reading reading = readings.get(quantity);
      if (reading instanceof Reading.NotMeasured missing) {
        none.computeIfAbsent(missing.reason(), r -> new ArrayList<>()).add(quantity.title());
      } else if (reading != null) {
        line(quantity.title(), reading, out);
      }
    }
    none.forEach(
        (reason, titles) ->
            out.printf(
                Locale.ROOT,
                "  %-" + LABEL + "s —  (%s)%n",
                titles.get(0),
                reason + (titles.size() > 1 ? "; neither is " + others(titles) : "")));
  }

  /** The quantities that one reason also leaves without a reading. */
  private static String others(List<String> titles) {
    return String.join(", nor ", titles.subList(1, titles.size()));
  }

  private static void line(String label, Reading reading, PrintWriter out) {
    String text =
        reading instanceof Reading.Measured measured
            ? Figures.withU(measured.value())
                + (measured.flags().isEmpty()
                    ? ""
                    : "  (" + String.join("; ", measured.flags()) + ")")
            : "—  (" + ((Reading.NotMeasured) reading).reason() + ")";
    out.printf(Locale.ROOT, "  %-" + LABEL + "s %s%n", label, text);
  }
}
