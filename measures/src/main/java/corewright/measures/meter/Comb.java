package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.spectrum.Harmonics;
import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The lines of the ripple beside its fundamental, from a spectrum whose window shows amplitudes
 * true (flat top): half of the fundamental's frequency, where every second cycle differs, and its
 * multiples. Lines above half the sample rate are looked for where they appear folded; those that
 * fall on another are not read.
 */
final class Comb {
  private static final int LONGEST = 1 << 15;
  private static final int SHORTEST = 512;
  private static final int HIGHEST = 5;

  private static final Quantity[] ALL = {
    Quantity.RIPPLE_SUBHARMONIC,
    Quantity.RIPPLE_HARMONIC_2,
    Quantity.RIPPLE_HARMONIC_3,
    Quantity.RIPPLE_DISTORTION
  };

  private Comb() {}

  /** Needs the fundamental among the readings. */
  static void read(Channel output, corewright.measures.meter.Window window, Readings into) {
    if (into.measured(Quantity.RIPPLE_FUNDAMENTAL).isEmpty()) {
      into.none("the ripple has no fundamental to compare with", ALL);
      return;
    }
    int segment = Math.min(LONGEST, Integer.highestOneBit(window.count()));
    if (segment < SHORTEST) {
      into.none("the window has fewer than " + SHORTEST + " samples", ALL);
      return;
    }
    double fundamental_Hz = into.measured(Quantity.RIPPLE_FUNDAMENTAL).orElseThrow().value();
    double[] x = new double[window.count()];
    for (int i = 0; i < x.length; i++) {
      x[i] = output.wave().at(window.from() + i);
    }
    Spectrum spectrum = Spectrum.of(x, output.sampleRate_Hz(), Window.HFT90D, segment);
    Harmonics lines = new Harmonics(spectrum, fundamental_Hz);
    OptionalDouble one = lines.amplitude(1);
    if (one.isEmpty()) {
      into.none("the fundamental cannot be told from the mean in this window", ALL);
      return;
    }
    double floor = floor(spectrum);
    double percent = 100 / one.getAsDouble();
    into.put(
        Quantity.RIPPLE_SUBHARMONIC,
        ofOne(lines.subharmonicRatio(), 100, percent * floor, Unit.PERCENT));
    harmonic(output, lines, 2, floor, Quantity.RIPPLE_HARMONIC_2, into);
    harmonic(output, lines, 3, floor, Quantity.RIPPLE_HARMONIC_3, into);
    into.put(
        Quantity.RIPPLE_DISTORTION,
        ofOne(lines.distortion(HIGHEST), 100, 2 * percent * floor, Unit.PERCENT));
  }

  private static void harmonic(
      Channel output, Harmonics lines, int order, double floor, Quantity quantity, Readings into) {
    OptionalDouble amplitude = lines.amplitude(order);
    if (amplitude.isEmpty()) {
      into.none("that line falls on another one at this sample rate", quantity);
    } else {
      Measurement read = output.difference(amplitude.getAsDouble(), floor);
      into.put(quantity, read);
    }
  }

  private static Reading ofOne(OptionalDouble part, double scale, double u, Unit unit) {
    return part.isPresent()
        ? Reading.of(scale * part.getAsDouble(), u, unit)
        : Reading.none("that line falls on another one at this sample rate");
  }

  /** What most bins hold: the amplitude that noise alone gives a line. */
  private static double floor(Spectrum spectrum) {
    double[] amplitudes = new double[spectrum.size()];
    for (int k = 0; k < amplitudes.length; k++) {
      amplitudes[k] = spectrum.amplitude(k);
    }
    Arrays.sort(amplitudes);
    return amplitudes[amplitudes.length / 2];
  }
}
