package corewright.bench.log.table;

import java.util.Optional;

/**
 * How a line becomes cells and a cell a number.
 *
 * @param delimiter between cells
 * @param decimal the commoner decimal mark; a column may have the other
 * @param columns cells of a row of data
 * @param pairs present where the decimal mark is the delimiter too
 */
record Dialect(char delimiter, char decimal, int columns, Optional<CommaPairs> pairs) {

  /** Cuts the line; false where it cannot be cut safely. */
  boolean cut(String line, Cells cells) {
    cells.split(line, delimiter);
    return pairs.isEmpty() || pairs.get().join(cells);
  }

  Dialect with(CommaPairs found) {
    return new Dialect(delimiter, ',', found.columns(), Optional.of(found));
  }

  String words() {
    String between =
        switch (delimiter) {
          case ',' -> "commas";
          case ';' -> "semicolons";
          case '\t' -> "tabs";
          case '|' -> "bars";
          case Cells.SPACES -> "runs of spaces";
          default -> "'" + delimiter + "'";
        };
    String mark = decimal == ',' ? "decimal comma" : "decimal point";
    return "cells between "
        + between
        + ", "
        + mark
        + (pairs.isPresent() ? ", the comma being both" : "");
  }
}
