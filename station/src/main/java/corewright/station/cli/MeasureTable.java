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
import java.math.BigDecimal;
import java.math.RoundingMode;
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
    Map<Quantity, String> missing = NotMeasured.inAll(run.holds());
    run.holds().forEach(hold -> print(hold, missing, out));
    if (!missing.isEmpty()) {
      out.printf("%nNot measured in any hold%n");
      NotMeasured.lines(missing).forEach(out::println);
    }
    out.printf("%nThe whole run%n");
    print(run.readings(), Map.of(), out);
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
    result.judgement().map(FindingLines::of).orElse(List.of()).forEach(out::println);
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

  private void print(MeasuredHold hold, Map<Quantity, String> told, PrintWriter out) {
    boolean judged = hold.windowEnd_s() > hold.windowStart_s();
    out.printf(
        "%nHold %d, %s s to %s s (%s)%n",
        hold.index() + 1,
        seconds(hold.start_s()),
        seconds(hold.end_s()),
        judged
            ? "judged from "
                + seconds(hold.windowStart_s())
                + " s to "
                + seconds(hold.windowEnd_s())
                + " s"
            : "too short to be judged");
    print(hold.readings(), told, out);
    for (FeedReadings feed : hold.feeds()) {
      line("Lowest 1 ms median, " + feed.name(), feed.lowestMedian(), out);
    }
  }

  /** A time of this run: no finer than its samples, and without zeros that say nothing. */
  private String seconds(double time_s) {
    int decimals = (int) Math.ceil(Math.log10(Math.max(1, result.run().sampleRate_Hz())));
    BigDecimal digits = BigDecimal.valueOf(time_s).setScale(decimals, RoundingMode.HALF_UP);
    return digits.stripTrailingZeros().toPlainString();
  }

  /** What was measured, line by line; then what was not, unless that is told of all holds. */
  private static void print(
      Map<Quantity, Reading> readings, Map<Quantity, String> told, PrintWriter out) {
    for (Quantity quantity : Quantity.values()) {
      if (readings.get(quantity) instanceof Reading.Measured measured) {
        line(quantity.title(), measured, out);
      }
    }
    Map<Quantity, String> missing = NotMeasured.in(readings);
    missing.keySet().removeAll(told.keySet());
    NotMeasured.lines(missing).forEach(out::println);
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
