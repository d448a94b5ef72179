package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.OnePoleFilter;
import corewright.measures.wave.PeakScatter;
import java.util.Optional;

/**
 * Ripple in a stated bandwidth: through a low-pass of one pole with its −3 dB point there, as a
 * bandwidth limit of an instrument is given. The filter starts at the begin of the hold, so that it
 * has settled in the window.
 */
final class StatedBand {
  /** The samples must hold what the filter is to take away. */
  private static final double MOST_OF_RATE = 0.2;

  /** Standard uncertainty of the filter's gain: up to 0.26 % too small, as far as a band goes. */
  private static final double GAIN_REL = 0.0013 / Math.sqrt(3);

  private static final Quantity[] BOTH = {
    Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND, Quantity.RIPPLE_RMS_IN_BAND
  };

  private StatedBand() {}

  static void read(
      Channel output, Window window, Level level, Optional<Double> bandwidth_Hz, Readings into) {
    if (bandwidth_Hz.isEmpty()) {
      into.none("no bandwidth was stated", BOTH);
      return;
    }
    double perSample = bandwidth_Hz.get() / output.sampleRate_Hz();
    if (perSample > MOST_OF_RATE) {
      into.none(
          "not measurable: the sample rate must be five times the stated bandwidth or more", BOTH);
      return;
    }
    OnePoleFilter filter = new OnePoleFilter(perSample);
    Band band = new Band(filter.of(output.wave(), window.holdFrom(), window.from(), window.to()));
    double slope = level.trend().slope();
    int n = window.count();
    double rounding = output.resolution().ofOne() * Math.sqrt(Math.PI * perSample);
    double hidden = rounding * output.resolution().left(level.scatter().sd(), slope * n, n);
    double rms = band.rms;
    into.put(
        Quantity.RIPPLE_RMS_IN_BAND,
        output.difference(rms, Root.of(band.uRms(), hidden, GAIN_REL * rms)));
    PeakScatter peaks = band.peaks(slope);
    double range = band.range;
    into.put(
        Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND,
        new Measurement(
            range,
            Root.of(
                peaks.highest(),
                peaks.lowest(),
                rounding,
                rounding,
                GAIN_REL * range,
                output.doubt().gain_rel() * range),
            Unit.VOLT));
  }

  /** What the filter lets through. */
  private static final class Band {
    private final double[] x;
    private final double mean;
    private final double range;
    private final double rms;

    Band(double[] x) {
      this.x = x;
      double sum = 0;
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (double value : x) {
        sum += value;
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      mean = sum / x.length;
      range = high - low;
      double squares = 0;
      for (double value : x) {
        squares += (value - mean) * (value - mean);
      }
      rms = Math.sqrt(squares / x.length);
    }

    /** From the scatter of the squares, and from what the mean follows of few values. */
    double uRms() {
      if (rms == 0) {
        return 0;
      }
      double squares =
          CorrelatedScatter.ofSquares(i -> x[i] - mean, x.length, rms * rms).ofMean() / (2 * rms);
      double values = CorrelatedScatter.of(i -> x[i] - mean, x.length, 1).effectiveCount();
      return Root.of(squares, rms / values / 2);
    }

    PeakScatter peaks(double slope) {
      return PeakScatter.of(i -> x[i] - slope * i, x.length);
    }
  }
}
