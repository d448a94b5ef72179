package corewright.bench.capture.csv;

import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.measures.Capture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Checks, value by value, that a column of time is a uniform time base.
 *
 * <p>All times so far must lie on one straight line through the first, each within half of its last
 * decimal and a twentieth of a sample: the slopes of all lines that do are kept as an interval, and
 * a time that leaves none breaks it. A whole number of missing samples is a gap; anything else is
 * refused, since every reading would be wrong by an unknown amount.
 */
final class TimeBase {
  private static final double WOBBLE = 0.05;
  private static final double WHOLE = 0.1;

  private final String file;
  private final String where;
  private final int unitDecimals;
  private final List<Capture.Gap> gaps = new ArrayList<>();
  private double first_s;
  private double last_s;
  private long rows;
  private long index;
  private double least_s;
  private double most_s;
  private int decimals;
  private double unit;
  private double rounding_s;

  /** Whether every step so far was the very same number. */
  private boolean even;

  private long last;
  private long step;

  TimeBase(String file, String where, int unitDecimals) {
    this.file = file;
    this.where = where;
    this.unitDecimals = unitDecimals;
  }

  /**
   * Takes the next time.
   *
   * @return how many samples are missing before it
   * @throws BadFile if the time base breaks here
   */
  int add(long mantissa, int places, int line) {
    if (even && mantissa - last == step && places + unitDecimals == decimals) {
      last = mantissa;
      index++;
      rows++;
      return 0;
    }
    if (even) {
      // On a line that was even so far the last time binds its slope tighter than all before it.
      even = false;
      last_s = seconds(last);
      bind(last_s - first_s);
    }
    boolean sameDecimals = places + unitDecimals == decimals;
    if (rows == 0 || !sameDecimals) {
      decimals = places + unitDecimals;
      unit = Math.pow(10, Math.abs(decimals));
      rounding_s = Math.pow(10, -decimals) / 2;
    }
    double time_s = seconds(mantissa);
    if (rows > 0 && !(time_s > last_s)) {
      throw bad(line, "the time does not rise from one line to the next");
    }
    int missing = 0;
    if (rows == 0) {
      first_s = time_s;
    } else if (rows == 1) {
      index = 1;
      double since = time_s - first_s;
      least_s = Math.max(Double.MIN_NORMAL, since * (1 - WOBBLE) - rounding_s);
      most_s = since * (1 + WOBBLE) + rounding_s;
      even = sameDecimals;
      step = mantissa - last;
    } else {
      double since = time_s - first_s;
      missing = fits(since, index + 1) ? 0 : missing(since, line);
      index += 1 + missing;
      bind(since);
    }
    rows++;
    last = mantissa;
    last_s = time_s;
    return missing;
  }

  /** Leaves of the slopes those whose lines pass this time at this sample. */
  private void bind(double since_s) {
    double slack = rounding_s + WOBBLE * most_s;
    least_s = Math.max(least_s, (since_s - slack) / index);
    most_s = Math.min(most_s, (since_s + slack) / index);
  }

  private double seconds(long mantissa) {
    return decimals >= 0 ? mantissa / unit : mantissa * unit;
  }

  private boolean fits(double since_s, long at) {
    double slack = rounding_s + WOBBLE * most_s;
    return since_s + slack >= least_s * at && since_s - slack <= most_s * at;
  }

  private int missing(double since_s, int line) {
    double usual_s = (least_s + most_s) / 2;
    double exact = since_s / usual_s - (index + 1);
    long whole = Math.round(exact);
    if (whole < 1
        || Math.abs(exact - whole) > WHOLE + rounding_s / usual_s
        || index + 1 + whole > Integer.MAX_VALUE - 8) {
      throw bad(
          line,
          String.format(
              Locale.ROOT,
              "the time steps by %.6g s where it has stepped by %.6g s so far",
              since_s + first_s - last_s,
              usual_s));
    }
    gaps.add(new Capture.Gap((int) (index + 1), (int) whole));
    return (int) whole;
  }

  /** Samples per second over the whole record; within a billionth of a whole number it is that. */
  double sampleRate_Hz() {
    if (rows < 2) {
      throw bad(0, "there are fewer than two lines of values");
    }
    double rate = index / ((even ? seconds(last) : last_s) - first_s);
    double whole = Math.rint(rate);
    return Math.abs(rate - whole) <= 1e-9 * rate ? whole : rate;
  }

  double first_s() {
    return first_s;
  }

  List<Capture.Gap> gaps() {
    return List.copyOf(gaps);
  }

  private BadFile bad(int line, String message) {
    return new BadFile(
        List.of(
            new Mistake(
                file,
                line,
                where,
                message,
                "A record must be sampled evenly; export it again with its full time"
                    + " resolution.")));
  }
}
