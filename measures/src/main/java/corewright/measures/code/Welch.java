package corewright.measures.code;

import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import java.util.Arrays;

/**
 * Spectrum of a long record by Welch's method: segments of 65,536 samples, half overlapping, Hann
 * window, the mean of each taken out. {@link Spectrum} does the same for any length and window in
 * double precision; this one computes in single precision, within some 10⁻⁶ of it, and takes its
 * codes half a segment at a time.
 *
 * <p>What several of these have added up can be added together: the halves of a record that begin
 * with the same half segment that another ended with. About 2.5 MB each. Not thread-safe.
 */
public final class Welch {
  /** Samples in half a segment: what is taken at a time. */
  public static final int HALF = SegmentPowers.LENGTH / 2;

  private static final int SIDE = SegmentPowers.SIDE;
  private static final int KEPT = 3;

  private static final float[][] WEIGHT = new float[SIDE][SIDE];

  static {
    double[] hann = Window.HANN.samples(SegmentPowers.LENGTH);
    for (int i = 0; i < hann.length; i++) {
      WEIGHT[i / SIDE][i % SIDE] = (float) hann[i];
    }
  }

  private final SegmentPowers powers = new SegmentPowers();

  /** The last three halves, less the reference code: two segments. */
  private final float[][][] halves = new float[KEPT][SIDE / 2][SIDE];

  private final double[] means = new double[KEPT];
  private int reference;
  private int taken;
  private int transformed;

  /** Takes the next {@value #HALF} codes. */
  public void add(Codes codes, int from) {
    codes.require(from, from + HALF);
    if (taken == 0) {
      // Floats hold differences from the record's level better than the codes themselves.
      reference = level(codes, from);
    }
    float[][] half = halves[taken % KEPT];
    long sum = 0;
    for (int row = 0; row < half.length; row++) {
      sum += unpack(half[row], codes, from + row * SIDE, reference);
    }
    means[taken % KEPT] = (double) sum / HALF;
    taken++;
    if (segments() - transformed == 2) {
      weigh(powers.re, taken - 3);
      weigh(powers.im, taken - 2);
      powers.add();
      transformed += 2;
    }
  }

  private static int level(Codes codes, int from) {
    long sum = 0;
    for (int i = from; i < from + HALF; i++) {
      sum += codes.at(i);
    }
    return (int) (sum / HALF);
  }

  private static long unpack(float[] row, Codes codes, int from, int reference) {
    int sum = 0;
    if ((from & 1) == 0) {
      int[] pairs = codes.pairs();
      int first = from >> 1;
      for (int i = 0; i < SIDE / 2; i++) {
        int pair = pairs[first + i];
        int early = Codes.early(pair) - reference;
        int late = Codes.late(pair) - reference;
        sum += early + late;
        row[2 * i] = early;
        row[2 * i + 1] = late;
      }
    } else {
      for (int i = 0; i < SIDE; i++) {
        int code = codes.at(from + i) - reference;
        sum += code;
        row[i] = code;
      }
    }
    return sum;
  }

  /** Writes the segment that begins with a half, weighed. */
  private void weigh(float[][] segment, int firstHalf) {
    int one = firstHalf % KEPT;
    int other = (firstHalf + 1) % KEPT;
    float mean = (float) ((means[one] + means[other]) / 2);
    for (int row = 0; row < SIDE / 2; row++) {
      int below = row + SIDE / 2;
      Rows.weigh(segment[row], halves[one][row], WEIGHT[row], mean);
      Rows.weigh(segment[below], halves[other][row], WEIGHT[below], mean);
    }
  }

  /** Whole segments among the codes taken. */
  public int segments() {
    return Math.max(0, taken - 1);
  }

  /**
   * The spectrum of all segments that several of these were given.
   *
   * @param lsb value of one code
   * @throws IllegalArgumentException if there is not one segment
   */
  public static Spectrum spectrum(double sampleRate_Hz, double lsb, Welch... parts) {
    double[] sums = new double[HALF + 1];
    int segments = 0;
    for (Welch part : parts) {
      part.finish();
      part.powers.addTo(sums);
      segments += part.segments();
    }
    for (int bin = 0; bin < sums.length; bin++) {
      sums[bin] *= lsb * lsb / segments;
    }
    return Spectrum.ofPowers(sums, sampleRate_Hz, Window.HANN, segments);
  }

  /** Transforms a last segment that has no other to go with. */
  private void finish() {
    if (segments() > transformed) {
      weigh(powers.re, taken - 2);
      for (float[] row : powers.im) {
        Arrays.fill(row, 0);
      }
      powers.add();
      transformed++;
    }
  }
}
