package corewright.bench.log.made;

/** How an export lays its rows out. */
public enum Layout {
  /** Names with units, then rows. */
  PLAIN,
  /** A row of units under the names. */
  UNITS_ROW,
  /** Numbers carry their unit. */
  CELL_UNITS,
  /** Every cell in quotes. */
  QUOTED,
  /** Commas between cells and within numbers, no quotes. */
  COMMA_PAIRS,
  /** Each round fills a row for each channel. */
  ONE_CHANNEL_A_ROW,
  /** Each signal has a time of its own. */
  TIME_PER_SIGNAL,
  /** The header comes again in the midst, a table of extremes at the end. */
  REPEATED_HEADER,
  /** Twenty lines about tool and vehicle come first, the delimiter declared. */
  PREAMBLE,
  /** Every row twice, no-data signs in other columns. */
  REPEATED_ROWS
}
