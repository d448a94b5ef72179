package corewright.station.web.dropped;

import corewright.bench.log.Crank;
import corewright.bench.log.LogFamily;
import corewright.bench.log.LogReading;
import corewright.bench.log.Output;
import corewright.bench.log.Supply;
import corewright.bench.log.table.Column;
import corewright.bench.log.table.Role;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.station.work.CrankLog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A customer's log as its page shows it: the sentence first, the dots, then the figures, and what
 * was taken for what.
 */
public record LogPage(
    String id,
    String name,
    String sentence,
    List<String> reasons,
    List<String> doubts,
    List<String> next,
    List<CrankRow> cranks,
    int more,
    List<Guess> guesses,
    List<String> told,
    List<String> remarks) {
  private static final int MOST_CRANKS = 12;

  /** One crank; {@code figures} are lines of label and reading. */
  public record CrankRow(String title, String conclusion, List<Line> figures) {}

  /** A label and what was read. */
  public record Line(String label, String value) {}

  /**
   * One column.
   *
   * @param number counted from 1
   * @param role as the form names it
   */
  public record Guess(int number, String title, String role, String words, String why, int sure) {}

  static LogPage of(String id, String name, CrankLog.Read read) {
    LogReading log = read.reading();
    List<CrankRow> cranks = new ArrayList<>();
    for (int i = 0; i < Math.min(MOST_CRANKS, log.cranks().size()); i++) {
      cranks.add(row(i + 1, log.cranks().get(i)));
    }
    return new LogPage(
        id,
        name,
        "This log " + log.conclusion().words() + ".",
        log.reasons().stream().map(LogPage::onAPage).toList(),
        log.doubts().stream().map(LogPage::onAPage).toList(),
        log.next().stream().map(LogPage::onAPage).toList(),
        cranks,
        log.cranks().size() - cranks.size(),
        log.columns().stream().map(LogPage::guess).toList(),
        List.of(
            "Time: " + log.time().how() + ".",
            String.format(
                java.util.Locale.ROOT,
                "%.3f s from row to row, longest gap %.2f s.",
                log.pace().medianStep_s(),
                log.pace().longestGap_s()),
            "The file: " + read.encoding() + ", " + log.dialect() + ".",
            "Family: "
                + log.family().map(LogFamily::id).orElse("none")
                + ", "
                + log.familyHow()
                + ".",
            "± is U with k = 2, of scatter and resolution only."),
        log.remarks());
  }

  /** The reader's sentences name the command's options; here they are fields. */
  private static String onAPage(String sentence) {
    return sentence.replaceAll("--([a-z]+)", "'$1' beside this");
  }

  private static Guess guess(Column c) {
    return new Guess(
        c.index() + 1,
        c.role() == Role.PERSONAL ? "(dropped at reading)" : c.title(),
        LogForm.CHOICES.contains(c.role()) ? c.role().name() : Role.NONE.name(),
        c.role().words() + (c.unit().isEmpty() ? "" : " in " + c.unit()),
        c.why(),
        (int) Math.round(100 * c.confidence()));
  }

  private static CrankRow row(int number, Crank c) {
    List<Line> lines = new ArrayList<>();
    for (Supply s : c.supplies()) {
      add(lines, "Supply '" + s.name() + "', at rest", s.rest());
      add(lines, "Supply '" + s.name() + "', lowest judged", s.minimum());
    }
    for (Output o : c.outputs()) {
      add(lines, "Output '" + o.name() + "', at rest", o.rest());
      add(lines, "Output '" + o.name() + "', middle", o.middle());
      add(lines, "Output '" + o.name() + "', lowest quarter", o.lowestQuarter());
      add(lines, "Output '" + o.name() + "', drift", o.drift());
      add(lines, "Output '" + o.name() + "', after the crank", o.recovered());
    }
    return new CrankRow(
        "Crank "
            + number
            + ", "
            + Figures.number(c.start_s(), 2)
            + " to "
            + Figures.number(c.end_s(), 2)
            + " s, shown by "
            + c.shownBy(),
        c.conclusion().brief(),
        lines);
  }

  private static void add(List<Line> lines, String label, Optional<Measurement> m) {
    m.ifPresent(value -> lines.add(new Line(label, Figures.withU(value))));
  }
}
