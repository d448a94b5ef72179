package corewright.measures.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against {@link Spectrum}, which computes the same in double precision by another algorithm. */
class WelchTest {
  private static final double RATE_HZ = 1e6;
  private static final double LSB = 80 / 32768.0;

  /** Largest relative difference of a density that single precision leaves. */
  private static final double SINGLE = 2e-6;

  /** What eight stages of rounding to 24 bits leave everywhere, of the largest. */
  private static final double FLOOR = 1e-7;

  @ParameterizedTest
  @CsvSource({
    "NOISY, 2, 0",
    "NOISY, 3, 1",
    "NOISY, 6, 0",
    "STEPPING, 5, 0",
    "STEPPING, 4, 7",
    "UNIFORM, 3, 0"
  })
  void agreesWithDoublePrecision(Seeded.Kind kind, int halves, int start) {
    short[] raw = Seeded.codes(kind, start + halves * Welch.HALF, 41);
    Spectrum found = Welch.spectrum(RATE_HZ, LSB, welch(raw, start, halves));
    double[] volts = Seeded.doubles(raw, start, raw.length);
    for (int i = 0; i < volts.length; i++) {
      volts[i] *= LSB;
    }
    Spectrum plain = Spectrum.of(volts, RATE_HZ, Window.HANN, 2 * Welch.HALF);
    assertAgree(plain, found, SINGLE);
  }

  private static Welch welch(short[] raw, int start, int halves) {
    Welch welch = new Welch();
    Codes codes = Codes.of(raw);
    for (int half = 0; half < halves; half++) {
      welch.add(codes, start + half * Welch.HALF);
    }
    return welch;
  }

  /** Weak bins beside strong ones carry the rounding of the strong. */
  private static void assertAgree(Spectrum plain, Spectrum found, double tolerance) {
    assertEquals(plain.segments(), found.segments());
    assertEquals(plain.size(), found.size());
    double largest = 0;
    for (int bin = 0; bin < plain.size(); bin++) {
      largest = Math.max(largest, plain.density(bin));
    }
    for (int bin = 0; bin < plain.size(); bin++) {
      double allowed = tolerance * plain.density(bin) + FLOOR * largest;
      assertEquals(plain.density(bin), found.density(bin), allowed, "bin " + bin);
    }
  }

  @Test
  void partsOfARecordAddUpToTheWhole() {
    short[] raw = Seeded.codes(Seeded.Kind.NOISY, 6 * Welch.HALF, 42);
    Spectrum whole = Welch.spectrum(RATE_HZ, LSB, welch(raw, 0, 6));
    Welch left = welch(raw, 0, 3);
    Welch right = welch(raw, 2 * Welch.HALF, 4);
    assertAgree(whole, Welch.spectrum(RATE_HZ, LSB, left, right), SINGLE);
  }

  /** A sine on a bin has the amplitude that it was given, and the record's mean does not matter. */
  @Test
  void aSineKeepsItsAmplitude() {
    int bin = 6573;
    short[] raw = new short[5 * Welch.HALF];
    for (int i = 0; i < raw.length; i++) {
      double phase = 2 * Math.PI * ((long) bin * i % (2 * Welch.HALF)) / (2 * Welch.HALF);
      raw[i] = (short) Math.round(19_660 + 1000 * Math.sin(phase));
    }
    Spectrum found = Welch.spectrum(RATE_HZ, LSB, welch(raw, 0, 5));
    assertEquals(1000 * LSB, found.amplitude(bin), 1e-5);
    assertEquals(0, found.amplitude(bin + 2), 1e-4);
    assertEquals(bin * RATE_HZ / 65_536, found.frequency_Hz(bin), 1e-9);
  }

  /** More pairs than are added up in single precision at a time. */
  @Test
  void longRecordsLoseNoDigits() {
    short[] raw = Seeded.codes(Seeded.Kind.NOISY, 3 * Welch.HALF, 43);
    Codes codes = Codes.of(raw);
    Welch once = welch(raw, 0, 3);
    Welch often = new Welch();
    for (int i = 0; i < 150; i++) {
      often.add(codes, (i % 3) * Welch.HALF);
    }
    // Period 3 halves: segments 01, 12, 20 in turn; compare with the same three, averaged.
    Welch period = welch(raw, 0, 3);
    period.add(codes, 0);
    Spectrum expected = Welch.spectrum(RATE_HZ, LSB, period);
    Spectrum found = Welch.spectrum(RATE_HZ, LSB, often);
    assertEquals(149, found.segments());
    assertEquals(2, Welch.spectrum(RATE_HZ, LSB, once).segments());
    for (int bin = 0; bin < expected.size(); bin++) {
      // 149 is 49 periods of three and two segments more.
      assertEquals(1, found.density(bin) / expected.density(bin), 0.02, "bin " + bin);
    }
  }

  @Test
  void refusesLessThanASegment() {
    Welch welch = welch(Seeded.codes(Seeded.Kind.QUIET, Welch.HALF, 44), 0, 1);
    assertThrows(IllegalArgumentException.class, () -> Welch.spectrum(RATE_HZ, LSB, welch));
  }
}
