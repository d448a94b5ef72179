package corewright.bench.log.table;

/** Tells rows of data from names, remarks and blank lines. */
final class DataRow {
  private DataRow() {}

  /** Whether at least two cells, and half of those that are not empty, are numbers or times. */
  static boolean is(Cells cells) {
    int filled = 0;
    int values = 0;
    for (int i = 0; i < cells.count(); i++) {
      if (cells.blank(i)) {
        continue;
      }
      filled++;
      if (isValue(cells.text(i))) {
        values++;
      }
    }
    return values >= 2 && 2 * values >= filled;
  }

  static boolean isValue(String cell) {
    return !Double.isNaN(NumberCell.value(cell, '.'))
        || !Double.isNaN(NumberCell.value(cell, ','))
        || ClockCell.of(cell).form() != ClockCell.Form.NONE;
  }
}
