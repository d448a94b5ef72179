package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.statistics.LinearFit;
import corewright.measures.wave.CorrelatedScatter;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the output stays in regulation during a hold: collapse, hiccup, line regulation.
 *
 * <p>Regulation is lost more than 5 % under nominal, where no transient brings an output that has
 * one (common practice, no source).
 */
record Regulation(Channel output, Channel feed, double nominal_V) {
  static final double LOST_PART = 0.05;

  /** A converter that starts anew has come down to half of nominal or further. */
  private static final double HICCUP_PART = 0.5;

  private static final double HYSTERESIS_PART = 0.05;
  private static final int FEWEST_HICCUPS = 3;

  /** Sudden spikes do not bring an output back, s. */
  private static final double MOMENT_S = 1e-3;

  private static final int MOST_BLOCKS = 200;
  private static final int FEWEST_BLOCKS = 12;

  /** The line moves if it moves by this part of itself. */
  private static final double MOVES_PART = 0.05;

  private static final Quantity[] UNDER_HICCUP = {
    Quantity.DRIFT_ROBUST,
    Quantity.OUTPUT_STEPS,
    Quantity.LARGEST_STEP,
    Quantity.THERMAL_TIME_CONSTANT,
    Quantity.RIPPLE_SUBHARMONIC,
    Quantity.RIPPLE_HARMONIC_2,
    Quantity.RIPPLE_HARMONIC_3,
    Quantity.RIPPLE_DISTORTION
  };

  void read(Window window, Readings into) {
    List<Integer> restarts = falls(window);
    if (restarts.size() >= FEWEST_HICCUPS) {
      into.put(Quantity.HICCUP_PERIOD, period(restarts));
      into.none(
          "the output comes back again and again, until it falls once more",
          Quantity.COLLAPSE,
          Quantity.INPUT_AT_COLLAPSE,
          Quantity.LINE_REGULATION);
      return;
    }
    into.none("the output does not restart in this hold", Quantity.HICCUP_PERIOD);
    collapse(window, into);
  }

  /** An output that restarts has no slope, no steps and no lines that say anything. */
  static void silence(Readings readings) {
    if (readings.measured(Quantity.HICCUP_PERIOD).isPresent()) {
      readings.none("the output restarts again and again in this hold", UNDER_HICCUP);
    }
  }

  /** Samples at which the output falls below half of nominal. */
  private List<Integer> falls(Window window) {
    List<Integer> falls = new ArrayList<>();
    double low = HICCUP_PART * nominal_V;
    double high = low + HYSTERESIS_PART * nominal_V;
    boolean up = false;
    for (int i = window.holdFrom(); i < window.holdTo(); i++) {
      double v = output.wave().at(i);
      if (up && v < low) {
        falls.add(i);
      }
      up = v > high || (up && v >= low);
    }
    return falls;
  }

  /**
   * A fall is known to a sample, so that a period scatters by the grid alone: not counted twice.
   */
  private Measurement period(List<Integer> falls) {
    double[] periods = new double[falls.size() - 1];
    for (int k = 0; k < periods.length; k++) {
      periods[k] = (falls.get(k + 1) - falls.get(k)) / output.sampleRate_Hz();
    }
    double mean = (falls.get(falls.size() - 1) - falls.get(0)) / output.sampleRate_Hz();
    mean /= periods.length;
    double squares = 0;
    for (double p : periods) {
      squares += (p - mean) * (p - mean);
    }
    double grid = 1 / output.sampleRate_Hz() / Math.sqrt(6);
    double own = Math.max(0, squares / Math.max(1, periods.length - 1) - grid * grid);
    double u = Root.of(Math.sqrt(own / periods.length), grid / periods.length);
    return new Measurement(mean, u, Unit.SECOND);
  }

  private void collapse(Window window, Readings into) {
    double lost = (1 - LOST_PART) * nominal_V;
    int size = (int) Math.max(1, Math.round(MOMENT_S * output.sampleRate_Hz()));
    int blocks = Math.max(1, (window.holdTo() - window.holdFrom()) / size);
    int end = window.holdFrom() + blocks * size;
    int back = end;
    while (back > window.holdFrom() && mean(output, back - size, back) < lost) {
      back -= size;
    }
    if (back == end) {
      into.none(
          "the output is in regulation at the end of the hold",
          Quantity.COLLAPSE,
          Quantity.INPUT_AT_COLLAPSE);
      line(window, into);
      return;
    }
    into.none("the output leaves regulation in this hold", Quantity.LINE_REGULATION);
    double after_s = Math.max(0, back / output.sampleRate_Hz() - window.hold().start_s());
    double blocksOff = Root.of(1 / Math.sqrt(3), undecided(window, size, lost) / 4.0);
    into.put(
        Quantity.COLLAPSE,
        new Measurement(after_s, blocksOff * size / output.sampleRate_Hz(), Unit.SECOND));
    if (back == window.holdFrom() || !moves(window)) {
      into.none("the input does not move in this hold", Quantity.INPUT_AT_COLLAPSE);
      return;
    }
    double then = mean(feed, back - size, back);
    // How far the input moves in the time that is left open, from wide enough for its noise.
    int reach = size * (int) Math.ceil(4 + 2 * blocksOff);
    int from = Math.max(window.holdFrom(), back - reach);
    int to = Math.min(end, back + reach);
    int half = (to - from) / 2;
    double perBlock =
        (mean(feed, to - half, to) - mean(feed, from, from + half)) / half * (double) size;
    double noise = BlockNoise.of(feed, window.holdFrom(), window.holdTo(), size);
    into.put(
        Quantity.INPUT_AT_COLLAPSE,
        feed.absolute(then, Root.of(feed.resolution().ofOne(), noise, perBlock * blocksOff)));
  }

  /** Blocks so near the level that noise could have decided on which side of it they lie. */
  private int undecided(Window window, int size, double level) {
    double near = 2 * BlockNoise.of(output, window.holdFrom(), window.holdTo(), size);
    int undecided = 0;
    for (int at = window.holdFrom(); at + size <= window.holdTo(); at += size) {
      undecided += Math.abs(mean(output, at, at + size) - level) <= near ? 1 : 0;
    }
    return undecided;
  }

  private boolean moves(Window window) {
    Blocks line = Blocks.of(feed, window.holdFrom(), window.holdTo(), MOST_BLOCKS);
    return range(line.mean()) > MOVES_PART * Math.abs(line.mean()[0]);
  }

  /** Slope of the output over the input, times the range of the input, in % of nominal. */
  private void line(Window window, Readings into) {
    Blocks line = Blocks.of(feed, window.from(), window.to(), MOST_BLOCKS);
    double range = line.count() == 0 ? 0 : range(line.mean());
    if (line.count() < FEWEST_BLOCKS || range <= MOVES_PART * Math.abs(line.mean()[0])) {
      into.none("the input moves by less than 5 % in this hold", Quantity.LINE_REGULATION);
      return;
    }
    Blocks out = Blocks.of(output, window.from(), window.to(), MOST_BLOCKS);
    LinearFit fit = LinearFit.line(line.mean(), out.mean());
    double percent = 100 * range / nominal_V;
    double[] in = line.mean();
    double[] left = out.mean();
    for (int b = 0; b < left.length; b++) {
      left[b] -= fit.coefficient(0) + fit.coefficient(1) * in[b];
    }
    CorrelatedScatter scatter = CorrelatedScatter.of(b -> left[b], left.length, 2);
    double wider = Math.sqrt(Math.max(1, left.length / scatter.effectiveCount()));
    // As far as rounding shows in the scatter it is counted there.
    double hides = output.resolution().left(out.scatter(), fit.coefficient(1) * range, out.count());
    into.put(
        Quantity.LINE_REGULATION,
        new Measurement(
            percent * fit.coefficient(1),
            percent * Math.max(fit.u(1) * wider, hides * output.resolution().ofOne() / range),
            Unit.PERCENT));
  }

  private static double range(double[] x) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : x) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return high - low;
  }

  private static double mean(Channel channel, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += channel.wave().at(i) / (to - from);
    }
    return sum;
  }
}
