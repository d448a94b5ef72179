package corewright.measures.meter;

import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.spectrum.Harmonics;
import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
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
    into.put(
        Quantity.RIPPLE_SUBHARMONIC, percent(lines.subharmonicRatio(), lines.uSubharmonicRatio()));
    harmonic(output, lines, 2, Quantity.RIPPLE_HARMONIC_2, into);
    harmonic(output, lines, 3, Quantity.RIPPLE_HARMONIC_3, into);
    into.put(
        Quantity.RIPPLE_DISTORTION, percent(lines.distortion(HIGHEST), lines.uDistortion(HIGHEST)));
  }

  private static void harmonic(
      Channel output, Harmonics lines, int order, Quantity quantity, Readings into) {
    OptionalDouble amplitude = lines.amplitude(order);
    if (amplitude.isEmpty()) {
      into.none("that line falls on another one at this sample rate", quantity);
    } else {
      into.put(quantity, output.difference(amplitude.getAsDouble(), lines.u(order)));
    }
  }

  private static Reading percent(OptionalDouble part, double u) {
    return part.isPresent()
        ? Reading.of(100 * part.getAsDouble(), 100 * u, Unit.PERCENT)
        : Reading.none("that line falls on another one at this sample rate");
  }
}
