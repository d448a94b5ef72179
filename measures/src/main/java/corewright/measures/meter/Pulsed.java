package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.wave.Corners;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.NoisyExtreme;
import corewright.measures.wave.PulseTrain;
import corewright.measures.wave.Smoothing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A pulsed load: how many pulses, how deep the output dips in each, and how alike they are. */
final class Pulsed {
  /** Fewer are no train. */
  static final int FEWEST = 3;

  /** A dip this many robust standard deviations from the median stands out. */
  private static final double STANDS_OUT = 3.5;

  /** The level before a pulse is the mean over at most this, s. */
  private static final double LEVEL_S = 1e-3;

  /** A pulse counts from a tenth of its height on; what a ramp does before is this part of it. */
  static final int FOOT = 8;

  private static final Quantity[] ALL = {
    Quantity.PULSE_RATE,
    Quantity.DIP,
    Quantity.DIP_SPREAD,
    Quantity.DIP_OUTLIERS,
    Quantity.DIP_ALTERNATION
  };

  private Pulsed() {}

  static void read(
      Channel output, Optional<PulseTrain> found, Window window, Level level, Readings into) {
    if (found.isEmpty()) {
      into.none("the load was not recorded", Quantity.PULSES);
      into.none("the load was not recorded", ALL);
      return;
    }
    List<PulseTrain.Pulse> pulses = found.get().pulses();
    into.put(Quantity.PULSES, Reading.of(pulses.size(), 0, Unit.ONE));
    if (pulses.size() < FEWEST) {
      into.none("the load is not pulsed", ALL);
      return;
    }
    double rate = output.sampleRate_Hz();
    double[] spacing = new double[pulses.size() - 1];
    for (int p = 0; p < spacing.length; p++) {
      spacing[p] = (pulses.get(p + 1).from() - pulses.get(p).from()) / rate;
    }
    into.put(Quantity.PULSE_RATE, perSecond(spacing, rate));
    dips(output, pulses, window, level, into);
  }

  /** Periods from the first pulse to the last, those counted in which a pulse is missing. */
  private static Measurement perSecond(double[] spacing_s, double sampleRate_Hz) {
    Storage.Middle usual = Storage.Middle.of(spacing_s);
    double all_s = 0;
    double periods = 0;
    for (double s : spacing_s) {
      all_s += s;
      periods += Math.max(1, Math.rint(s / usual.median()));
    }
    double grid = 1 / sampleRate_Hz / Math.sqrt(6) / periods;
    double perSecond = periods / all_s;
    double u_s = Root.of(usual.u(), grid);
    return new Measurement(perSecond, perSecond * perSecond * u_s, Unit.HERTZ);
  }

  private static void dips(
      Channel output, List<PulseTrain.Pulse> pulses, Window window, Level level, Readings into) {
    double[] x = Smoothing.over(output.wave(), window.from(), window.to(), 0); // as read
    int most = (int) Math.max(1, LEVEL_S * output.sampleRate_Hz());
    double[] dips = new double[pulses.size()];
    double sampling = 0;
    double quiet = 0;
    for (int p = 0; p < dips.length; p++) {
      PulseTrain.Pulse pulse = pulses.get(p);
      int earliest = p == 0 ? window.from() : (pulses.get(p - 1).to() + pulse.from()) / 2;
      int latest = p + 1 == dips.length ? window.to() : (pulse.to() + pulses.get(p + 1).from()) / 2;
      int begin = Math.max(window.from() + 1, pulse.from() - pulse.length() / FOOT);
      int from = Math.min(begin - 1, Math.max(earliest, begin - most));
      Stretch before = Stretch.of(x, from - window.from(), begin - window.from());
      int lowest = lowest(x, pulse.from() - window.from(), latest - window.from());
      dips[p] = before.end() - x[lowest];
      sampling += Corners.ramp(output.wave(), window.from() + lowest, 1) / dips.length;
      quiet += before.sd() / dips.length;
    }
    Storage.Middle dip = Storage.Middle.of(dips);
    double noise = Math.min(quiet, level.scatter().sd());
    double high = NoisyExtreme.halfWidth(noise, 2, 1) / 2;
    double u = Root.of(dip.u(), high, sampling, output.resolution().ofOne());
    into.put(Quantity.DIP, output.difference(dip.median(), u));
    into.put(
        Quantity.DIP_SPREAD,
        output.difference(dip.spread(), dip.spread() / Math.sqrt(2.0 * (dip.count() - 1))));
    int outliers = 0;
    for (double d : dips) {
      double floor = Math.max(dip.spread(), output.resolution().ofOne());
      outliers += Math.abs(d - dip.median()) > STANDS_OUT * floor ? 1 : 0;
    }
    into.put(Quantity.DIP_OUTLIERS, Reading.of(outliers, 0, Unit.ONE));
    into.put(Quantity.DIP_ALTERNATION, alternation(output, dips, sampling));
  }

  /**
   * Median of the even less that of the odd: sub-harmonic behaviour, 0 where pulses are alike.
   *
   * @param sampling where a period is half a sample longer than whole ones, every second corner is
   *     missed by half a sample more: half of what the sampling leaves in a dip
   */
  private static Measurement alternation(Channel output, double[] dips, double sampling) {
    List<Double> even = new ArrayList<>();
    List<Double> odd = new ArrayList<>();
    for (int p = 0; p < dips.length; p++) {
      (p % 2 == 0 ? even : odd).add(dips[p]);
    }
    Storage.Middle one = Storage.Middle.of(even.stream().mapToDouble(d -> d).toArray());
    Storage.Middle other = Storage.Middle.of(odd.stream().mapToDouble(d -> d).toArray());
    double rounding = output.resolution().ofOne() / Math.sqrt(dips.length / 2.0);
    return output.difference(
        one.median() - other.median(), Root.of(one.u(), other.u(), rounding, sampling / 2));
  }

  private static int lowest(double[] x, int from, int to) {
    int lowest = from;
    for (int i = from; i < to; i++) {
      lowest = x[i] < x[lowest] ? i : lowest;
    }
    return lowest;
  }

  /**
   * The line through the samples before a pulse: the output may still be on its way back from the
   * last.
   *
   * @param end the line where the pulse begins
   * @param sd scatter about it
   */
  private record Stretch(double end, double sd) {
    static Stretch of(double[] x, int from, int to) {
      int n = to - from;
      if (n < 4) {
        return new Stretch(x[to - 1], 0);
      }
      double mean = 0;
      double cross = 0;
      for (int i = from; i < to; i++) {
        mean += x[i] / n;
        cross += (i - from - (n - 1) / 2.0) * x[i];
      }
      double slope = cross / LinearTrend.spread(n);
      double squares = 0;
      for (int i = from; i < to; i++) {
        double off = x[i] - mean - slope * (i - from - (n - 1) / 2.0);
        squares += off * off;
      }
      return new Stretch(mean + slope * (n - 1) / 2.0, Math.sqrt(squares / (n - 2)));
    }
  }
}
