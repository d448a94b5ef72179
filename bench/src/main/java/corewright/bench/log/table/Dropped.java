package corewright.bench.log.table;

/** What reading left out, counted; filled while the rows are gone through. */
public final class Dropped {
  private long rows;
  private long duplicates;
  private long others;
  private long noData;
  private long outOfRange;
  private long misplaced;
  private int clockSteps;
  private int headers;

  /** Rows of data that were read. */
  public long rows() {
    return rows;
  }

  /** Rows that repeated the one before, stamp and all. */
  public long duplicates() {
    return duplicates;
  }

  /** Lines that are neither data nor header: remarks, minima and maxima at the end, cut rows. */
  public long others() {
    return others;
  }

  /** Cells of judged channels without a number, or with one that means none. */
  public long noData() {
    return noData;
  }

  /** Values that no vehicle has. */
  public long outOfRange() {
    return outOfRange;
  }

  /** Rows that stood in the wrong place. */
  public long misplaced() {
    return misplaced;
  }

  /** Steps of the clock backwards, other than past midnight. */
  public int clockSteps() {
    return clockSteps;
  }

  /** Headers after the first: pauses of the recording. */
  public int headers() {
    return headers;
  }

  void row() {
    rows++;
  }

  void duplicate() {
    duplicates++;
  }

  void other() {
    others++;
  }

  void cellWithoutData() {
    noData++;
  }

  void cellOutOfRange() {
    outOfRange++;
  }

  void misplacedRow() {
    misplaced++;
  }

  void clockStep() {
    clockSteps++;
  }

  void header() {
    headers++;
  }
}
