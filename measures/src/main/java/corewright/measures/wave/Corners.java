package corewright.measures.wave;

import corewright.measures.Waveform;

/**
 * What the extremes of a waveform may have been between its samples. A smooth bottom is hardly
 * missed; a corner is: a ramp that runs on after the lowest sample, or a dip that fell between two.
 * Both are made out by comparing the neighbours, so that noise counts for little.
 */
public final class Corners {
  /** A corner lies anywhere between two samples: rectangular (JCGM 100, 4.3.7). */
  private static final double RECTANGULAR = 1 / Math.sqrt(3);

  /**
   * A V that rises by c to the mean of its neighbours and is sampled anywhere within half a sample
   * has its bottom 0.477 c lower in the root of the mean square (integral of δ²/(1−δ)²).
   */
  private static final double OF_A_V = 0.477;

  /** Bends are told apart to so many bits of the sharpest. */
  private static final int COUNTED_BITS = 20;

  private Corners() {}

  /**
   * Standard uncertainty that a ramp leaves which runs on past the extreme sample, up to one sample
   * further. Only where the extreme itself lies on the ramp of the three before it, or after it: an
   * extreme that noise made does not.
   *
   * @param sign 1 for a lowest sample, −1 for a highest
   */
  public static double ramp(Waveform wave, int at, int sign) {
    return RECTANGULAR * Math.max(run(wave, at, sign, -1), run(wave, at, sign, 1));
  }

  private static double run(Waveform wave, int at, int sign, int side) {
    int far = at + 3 * side;
    if (far < 0 || far >= wave.size()) {
      return 0;
    }
    // In codes: what lies just at the bound must not depend on the scale of the channel.
    long near = wave.codeAt(at + side);
    long twoSteps = sign * (wave.codeAt(far) - near);
    long twiceOff = 2L * sign * (near - wave.codeAt(at)) - twoSteps;
    return twoSteps > 0 && Math.abs(twiceOff) <= twoSteps ? wave.lsb() * twoSteps / 2 : 0;
  }

  /**
   * How far below the lowest sample of a stretch a dip between samples may have gone, as a standard
   * uncertainty. Bends as sharp as the settled window has them count for nothing: they are its
   * ripple and noise.
   *
   * @param lowest the lowest sample's value
   * @param windowFrom first sample of the settled window
   * @param windowTo after its last sample; the same as the first where there is none
   */
  public static double dip(
      Waveform wave, int from, int to, double lowest, int windowFrom, int windowTo) {
    double usual = usualBend(wave, windowFrom, windowTo);
    double deepest = lowest;
    for (int i = from; i < to; i++) {
      deepest = Math.min(deepest, wave.at(i) - OF_A_V * Math.max(0, bend(wave, i) - usual));
    }
    return lowest - deepest;
  }

  /**
   * Twice the bend that one in a hundred exceeds: of white noise, more than any in a record. Bends
   * are whole numbers of half codes, so they are counted; very large ones in coarser steps.
   */
  private static double usualBend(Waveform wave, int from, int to) {
    long sharpest = 0;
    for (int i = from; i < to; i++) {
      sharpest = Math.max(sharpest, halfCodes(wave, i));
    }
    int coarser = Math.max(0, Long.SIZE - Long.numberOfLeadingZeros(sharpest) - COUNTED_BITS);
    int[] counts = new int[(int) (sharpest >> coarser) + 1];
    for (int i = from; i < to; i++) {
      counts[(int) (Math.max(0, halfCodes(wave, i)) >> coarser)]++;
    }
    int exceeded = (int) (0.99 * (to - from - 1));
    int step = 0;
    for (int seen = counts[0]; seen <= exceeded && step + 1 < counts.length; seen += counts[step]) {
      step++;
    }
    return wave.lsb() * ((long) step << coarser);
  }

  private static long halfCodes(Waveform wave, int i) {
    return i == 0 || i + 1 >= wave.size()
        ? 0
        : (long) wave.codeAt(i - 1) + wave.codeAt(i + 1) - 2L * wave.codeAt(i);
  }

  private static double bend(Waveform wave, int i) {
    return i == 0 || i + 1 >= wave.size() ? 0 : (wave.at(i - 1) + wave.at(i + 1)) / 2 - wave.at(i);
  }
}
