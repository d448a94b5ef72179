package corewright.bench.log.table;

/**
 * A column of time and how its cells become seconds.
 *
 * @param facts of the column; of no column at all where rows are counted
 * @param kind of its cells
 * @param scale for numbers: printed value times this is in seconds
 * @param coarse whether many rows share a stamp, so that they are spread over it
 * @param assumed whether a person gave the rate, and nothing was measured
 * @param values the columns that this time belongs to, from the first, inclusive
 * @param valuesEnd to the last, exclusive
 */
record TimeColumn(
    ColumnFacts facts,
    Kind kind,
    double scale,
    boolean coarse,
    boolean assumed,
    double confidence,
    String why,
    int values,
    int valuesEnd) {

  /** What the cells hold. */
  enum Kind {
    NUMBER,
    /** Hours, minutes and seconds; starts again at midnight. */
    CLOCK,
    /** The same on a dial of twelve hours without AM and PM. */
    HALF_DAY_CLOCK,
    /** Minutes and seconds; starts again each hour. */
    MINUTES,
    /** A number counted up row by row. */
    FRAME,
    /** Nothing: the rows themselves are counted. */
    ROWS
  }

  /** Seconds after which the stamps start again; 0 where they never do. */
  double wrap_s() {
    return switch (kind) {
      case CLOCK -> 86_400;
      case HALF_DAY_CLOCK -> 43_200;
      case MINUTES -> 3_600;
      default -> 0;
    };
  }

  /** Seconds in a cell; NaN where it holds no time. */
  double seconds(Cells cells) {
    int i = facts.index();
    if (i >= cells.count()) {
      return Double.NaN;
    }
    return switch (kind) {
      case NUMBER, FRAME ->
          scale * NumberCell.value(cells.line(), cells.from(i), cells.to(i), facts.decimal());
      case CLOCK, HALF_DAY_CLOCK, MINUTES -> ClockCell.of(cells.text(i)).seconds();
      case ROWS -> Double.NaN;
    };
  }

  TimeColumn over(int first, int end) {
    return new TimeColumn(facts, kind, scale, coarse, assumed, confidence, why, first, end);
  }
}
