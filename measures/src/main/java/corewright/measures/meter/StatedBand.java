package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import java.util.Optional;

/**
 * Ripple in a stated bandwidth: through a low-pass of one pole with its −3 dB point there, as a
 * bandwidth limit of an instrument is given. The filter is that of a waveform joined by straight
 * lines, exactly, and starts at the begin of the hold, so that it has settled in the window.
 */
final class StatedBand {
  /** The samples must hold what the filter is to take away. */
  private static final double MOST_OF_RATE = 0.2;

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
    double[] x = filtered(output, window, 2 * Math.PI * perSample);
    double mean = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : x) {
      mean += value / x.length;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    double squares = 0;
    for (double value : x) {
      squares += (value - mean) * (value - mean);
    }
    double rms = Math.sqrt(squares / x.length);
    // As many independent values as the filter's noise bandwidth lets through in this time.
    double independent = Math.max(2, Math.PI * perSample * x.length);
    double ofRms = rms / Math.sqrt(2 * Math.min(independent, level.scatter().effectiveCount()));
    double rounding = output.resolution().ofOne() * Math.sqrt(Math.PI * perSample);
    into.put(Quantity.RIPPLE_RMS_IN_BAND, output.difference(rms, Root.of(ofRms, rounding)));
    double ofPeaks = Root.of(ofRms, output.resolution().ofOne());
    into.put(
        Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND,
        new Measurement(
            high - low, Root.of(ofPeaks, output.doubt().gain_rel() * (high - low)), Unit.VOLT));
  }

  /**
   * @param a time between samples over the filter's time constant
   */
  private static double[] filtered(Channel output, Window window, double a) {
    double keep = Math.exp(-a);
    double ramp = (1 - keep) / a;
    double y = output.wave().at(window.holdFrom());
    double[] x = new double[window.count()];
    for (int i = window.holdFrom() + 1; i < window.to(); i++) {
      double was = output.wave().at(i - 1);
      double is = output.wave().at(i);
      y = keep * y + (ramp - keep) * was + (1 - ramp) * is;
      if (i >= window.from()) {
        x[i - window.from()] = y;
      }
    }
    if (window.from() == window.holdFrom()) {
      x[0] = output.wave().at(window.from());
    }
    return x;
  }
}
