package corewright.station.web.life;

import corewright.bench.record.RunRecord;
import corewright.reports.chart.Numerals;
import corewright.station.web.did.Readings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the unit read each time, side by side: one row a limit, where it was met worst. */
public record Compared(List<String> heads, List<Row> rows) {

  /**
   * One row.
   *
   * @param u and limit of the latest run that has this limit
   */
  public record Row(String title, List<Cell> cells, String u, String limit) {}

  /** A value; {@code bad} where it failed, which is underlined. */
  public record Cell(String value, boolean bad) {}

  static Compared of(Map<String, RunRecord> runs, Numerals numerals) {
    Map<String, Map<String, Readings.Row>> all = new LinkedHashMap<>();
    runs.forEach(
        (head, run) ->
            Readings.worst(run, numerals)
                .forEach(
                    row ->
                        all.computeIfAbsent(row.id(), id -> new LinkedHashMap<>()).put(head, row)));
    List<Row> rows = new ArrayList<>();
    for (Map<String, Readings.Row> byHead : all.values()) {
      Readings.Row last = byHead.values().stream().reduce((a, b) -> b).orElseThrow();
      rows.add(
          new Row(
              last.title(),
              runs.keySet().stream().map(head -> cell(byHead, head)).toList(),
              last.u(),
              last.limit()));
    }
    return new Compared(List.copyOf(runs.keySet()), rows);
  }

  private static Cell cell(Map<String, Readings.Row> byHead, String head) {
    Readings.Row row = byHead.get(head);
    return row == null ? new Cell("–", false) : new Cell(row.value(), row.form().equals("FAIL"));
  }
}
