package corewright.station.cli;

import corewright.bench.log.Crank;
import corewright.bench.log.LogReading;
import corewright.bench.log.Output;
import corewright.bench.log.Supply;
import corewright.bench.log.table.Column;
import corewright.bench.log.table.Role;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.station.work.CrankLog.Read;
import corewright.station.work.CrankLog.Result;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A customer's log for people: the sentence first, then the dots, then figures and guesses. */
final class CrankText {
  private static final int LABEL = 26;

  private final Result result;

  CrankText(Result result) {
    this.result = result;
  }

  void print(PrintWriter out) {
    result.comparison().ifPresent(c -> c.sentences().forEach(out::println));
    result.comparison().ifPresent(c -> out.println());
    print(result.log(), out);
    result
        .after()
        .ifPresent(
            after -> {
              out.println();
              print(after, out);
            });
  }

  private static void print(Read read, PrintWriter out) {
    LogReading log = read.reading();
    out.println(log.file() + ": this log " + log.conclusion().words() + ".");
    log.reasons().forEach(out::println);
    section(out, "Why that could be wrong", log.doubts());
    section(out, "What to do next", log.next());
    for (int i = 0; i < Math.min(log.cranks().size(), 12); i++) {
      crank(i + 1, log.cranks().get(i), out);
    }
    if (log.cranks().size() > 12) {
      out.println();
      out.println("… and " + (log.cranks().size() - 12) + " more cranks; --json lists them all.");
    }
    guesses(read, out);
    section(out, "Left out", log.remarks());
  }

  private static void section(PrintWriter out, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      out.println();
      out.println(title);
      lines.forEach(line -> out.println("  " + line));
    }
  }

  private static void crank(int number, Crank c, PrintWriter out) {
    out.println();
    out.printf(
        Locale.ROOT,
        "Crank %d, %.2f to %.2f s, shown by %s, %s%n",
        number,
        c.start_s(),
        c.end_s(),
        c.shownBy(),
        c.conclusion().brief());
    c.window()
        .ifPresent(
            w -> out.printf(Locale.ROOT, "  judged %.2f to %.2f s%n", w.start_s(), w.end_s()));
    new DotPlot(c).print(out);
    for (Supply s : c.supplies()) {
      out.println("  Supply '" + s.name() + "'");
      line(out, "at rest", s.rest());
      line(out, "lowest sample", s.lowest());
      line(out, "lowest level judged", s.minimum());
    }
    for (Output o : c.outputs()) {
      out.println("  Output '" + o.name() + "', " + o.samples() + " distinct samples judged");
      line(out, "at rest", o.rest());
      line(out, "middle", o.middle());
      line(out, "lowest quarter", o.lowestQuarter());
      line(out, "drift", o.drift());
      line(out, "after the crank", o.recovered());
    }
  }

  private static void line(PrintWriter out, String label, Optional<Measurement> m) {
    out.printf(Locale.ROOT, "    %-" + LABEL + "s %s%n", label, m.map(Figures::withU).orElse("—"));
  }

  private static void guesses(Read read, PrintWriter out) {
    LogReading log = read.reading();
    out.println();
    out.println("Taken for (override with --column, --unit, --rate, --delimiter, --decimal)");
    for (Column c : log.columns()) {
      boolean dropped = c.role() == Role.PERSONAL;
      out.printf(
          Locale.ROOT,
          "  %2d %-28s %s%s, %.0f %% sure%n",
          c.index() + 1,
          dropped ? "" : "'" + c.title() + "'",
          c.role().words(),
          c.role() == Role.NONE ? "" : " (" + c.why() + ")",
          100 * c.confidence());
    }
    out.println("  time: " + log.time().how());
    out.printf(
        Locale.ROOT,
        "  %.3f s from row to row, longest gap %.2f s%n",
        log.pace().medianStep_s(),
        log.pace().longestGap_s());
    out.println("  " + read.encoding() + ", " + log.dialect());
    out.println(
        "  family: " + log.family().map(f -> f.id()).orElse("none") + ", " + log.familyHow());
    out.println("  SHA-256 " + read.sha256());
    out.println("  ± is U with k = 2, of scatter and resolution only");
  }
}
