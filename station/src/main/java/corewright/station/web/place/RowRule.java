package corewright.station.web.place;

import corewright.bench.record.Decision;
import corewright.bench.triage.Triage;
import java.util.ArrayList;
import java.util.List;

/**
 * The rows of the decision table as a rule, with a mark at the one that fired. Drawn 858 wide, 66
 * high.
 *
 * @param words where the row stands, a sentence without a full stop
 * @param note revision of the table, and who decided otherwise
 * @param at where the mark is; negative where the row is not in the table as it stands
 */
public record RowRule(String words, String note, double at, String row, List<Tick> ticks) {
  private static final double MARGIN = 14;
  private static final double WIDTH = 858;
  private static final int LABELLED = 6;
  private static final int CLEAR = 3;

  /** One row: asked before the one that fired, or never. Only some carry their id. */
  public record Tick(double x, double top, boolean asked, String label) {}

  static RowRule of(Decision decision) {
    List<String> rows = Triage.rows();
    String row = decision.row().replace(" overruled", "");
    int fired = rows.indexOf(row);
    double step = (WIDTH - 2 * MARGIN) / (rows.size() - 1);
    List<Tick> ticks = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      boolean last = i == rows.size() - 1;
      boolean label =
          (last || (i % LABELLED == 0 && rows.size() - i > CLEAR)) && Math.abs(i - fired) >= CLEAR;
      if (i != fired) {
        ticks.add(
            new Tick(MARGIN + i * step, label ? 40 : 47, i < fired, label ? rows.get(i) : ""));
      }
    }
    String words =
        fired < 0
            ? "Row " + row + ", of a table that is no longer in force, fired"
            : "Row " + row + ", " + (fired + 1) + " of " + rows.size() + ", is the first that fits";
    return new RowRule(
        words,
        "table revision " + decision.tableRevision(),
        fired < 0 ? -1 : MARGIN + fired * step,
        row,
        ticks);
  }
}
