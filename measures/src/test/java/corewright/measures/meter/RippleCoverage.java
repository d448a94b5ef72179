package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import corewright.measures.Synthetic;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * Coverage of what the ripple is made of: peak to peak, harmonics, sub-harmonic, and all of it in a
 * stated bandwidth. One hold with lines of known amplitude in white or correlated noise, rounded.
 */
final class RippleCoverage {
  private static final double RATE = 200e3;
  private static final int SETTLE = 200;
  private static final double LSB = 0.01953125;

  private RippleCoverage() {}

  static void record(RandomGenerator random, Coverage into) {
    int length = 2100 + random.nextInt(2400);
    double noise = LSB * (0.7 + 3 * random.nextDouble());
    double phi = new double[] {0, 0, 0.5, 0.8, 0.95}[random.nextInt(5)];
    RippleLines lines = RippleLines.drawn(random, noise);
    double bandwidth = 0.02 + 0.15 * random.nextDouble(); // of the sample rate
    ColouredNoise of = new ColouredNoise(phi, noise);
    double[] n = of.drawn(SETTLE + length, random);
    int[] codes = new int[SETTLE + length];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (int) Math.round((48.003 + lines.at(i) + n[i]) / LSB);
    }
    Capture rest =
        Synthetic.capture(
            RATE,
            codes.length / RATE,
            Synthetic.exactly(1),
            Synthetic.exactly(48),
            Synthetic.exactly(12),
            random);
    Capture capture =
        new Capture(
            RATE,
            Waveform.ofOwnCodes(codes, LSB, 0, Unit.VOLT),
            rest.load(),
            rest.feeds(),
            Optional.empty(),
            List.of());
    MeasuredHold hold =
        RunMeter.read(
                capture,
                Synthetic.settings(SETTLE / RATE, 0, 48)
                    .withBandwidth(Optional.of(bandwidth * RATE)))
            .holds()
            .get(0);
    into.add(hold, Quantity.RIPPLE_SUBHARMONIC, 100 * lines.part(0.5));
    into.add(hold, Quantity.RIPPLE_HARMONIC_2, lines.amplitude() * lines.part(2));
    into.add(hold, Quantity.RIPPLE_HARMONIC_3, lines.amplitude() * lines.part(3));
    into.add(hold, Quantity.RIPPLE_DISTORTION, 100 * Math.hypot(lines.part(2), lines.part(3)));
    OnePole filter = new OnePole(bandwidth);
    double rounding = LSB * LSB / 12;
    double inBand = lines.through(filter).meanSquare();
    inBand += noise * noise * filter.leftOf(phi) + rounding * filter.leftOf(0);
    into.add(hold, Quantity.RIPPLE_RMS_IN_BAND, Math.sqrt(inBand));
    ExpectedRange range = ExpectedRange.of(lines, of, filter, SETTLE, length, random);
    into.add(hold, Quantity.RIPPLE_PEAK_TO_PEAK, range.all());
    into.add(hold, Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND, range.inBand());
  }
}
