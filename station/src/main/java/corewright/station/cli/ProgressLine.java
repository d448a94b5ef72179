package corewright.station.cli;

import corewright.bench.capture.ReadProgress;
import java.io.PrintWriter;

/** A bar on stderr while a long file is read; short ones need none. */
final class ProgressLine implements ReadProgress {
  private static final long LONG_BYTES = 64L << 20;
  private static final int WIDTH = 40;

  private final PrintWriter err;
  private final long longFrom;
  private int shown = -1;

  ProgressLine(PrintWriter err) {
    this(err, LONG_BYTES);
  }

  /**
   * @param longFrom bytes from which a file is long
   */
  ProgressLine(PrintWriter err, long longFrom) {
    this.err = err;
    this.longFrom = longFrom;
  }

  @Override
  public void at(long read, long all) {
    int percent = all == 0 ? 100 : (int) (100 * read / all);
    if (all < longFrom || percent == shown) {
      return;
    }
    shown = percent;
    int done = WIDTH * percent / 100;
    err.print("\r[" + "#".repeat(done) + ".".repeat(WIDTH - done) + "] " + percent + " %");
    if (percent == 100) {
      err.println();
    }
    err.flush();
  }
}
