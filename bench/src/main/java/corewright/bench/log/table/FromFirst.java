package corewright.bench.log.table;

import java.util.Iterator;

/** Rows whose seconds count from the first of them. */
final class FromFirst implements Iterator<Row> {
  private final Iterator<Row> rows;
  private double first_s = Double.NaN;

  FromFirst(Iterator<Row> rows) {
    this.rows = rows;
  }

  @Override
  public boolean hasNext() {
    return rows.hasNext();
  }

  @Override
  public Row next() {
    Row row = rows.next();
    first_s = Double.isNaN(first_s) ? row.t_s() : first_s;
    return row.at(row.segment(), row.t_s() - first_s);
  }
}
