package corewright.measures.wave;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Bins of the discrete Fourier transform of a real sequence of any length n.
 *
 * <p>The strongest bin is looked for in the transform of the sequence padded with zeros to a power
 * of two, a finer picture of the same spectrum. Every line that could hold the strongest bin (a
 * Hann bin lies at most 1.42 dB under its line's top) is then computed exactly on the grid of n.
 */
final class Bins {
  private static final double SCALLOP = Math.pow(10, -1.5 / 10); // of power; 1.42 dB and a little
  private static final int RESYNC = 256;

  /**
   * A Hann line reaches two bins to either side; from here to there it is noise, or other lines.
   */
  private static final int NEAREST = 4;

  private static final int FARTHEST = 24;

  /** Median of a Rayleigh distribution of scale 1, √(2 ln 2). */
  private static final double RAYLEIGH = Math.sqrt(2 * Math.log(2));

  private final double[] x;
  private final int padded;
  private final double[] power;

  Bins(double[] x) {
    this.x = x;
    padded = Integer.highestOneBit(Math.max(2, 2 * x.length - 1));
    power = power();
  }

  /** Index of the largest bin in {@code [low, high]}; ties go to the lower. */
  int strongest(int low, int high) {
    double perBin = (double) padded / x.length;
    int first = (int) Math.floor((low - 1) * perBin);
    int last = Math.min(padded / 2, (int) Math.ceil((high + 1) * perBin));
    int best = low;
    double most = 0;
    for (int i : peaks(Math.max(1, first), last)) {
      if (power[i] < SCALLOP * most * most) {
        break; // neither this nor any that follows can reach what was found
      }
      int near = (int) Math.round(i / perBin);
      for (int k = Math.max(near - 1, low); k <= Math.min(near + 1, high); k++) {
        double magnitude = magnitude(k);
        if (magnitude > most || (magnitude == most && k < best)) {
          most = magnitude;
          best = k;
        }
      }
    }
    return best;
  }

  /** Where a line that could hold the strongest bin has its top, the highest first. */
  private int[] peaks(int from, int to) {
    double top = IntStream.rangeClosed(from, to).mapToDouble(i -> power[i]).max().orElse(0);
    double least = Math.max(SCALLOP * SCALLOP * top, Double.MIN_VALUE);
    return IntStream.range(from, to)
        .filter(i -> power[i] >= least && power[i] >= power[i - 1] && power[i] >= power[i + 1])
        .boxed()
        .sorted((a, b) -> Double.compare(power[b], power[a]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * Scale of the Rayleigh distribution of |X| beside a bin, from the median of its neighbours: a
   * few other lines do not move it.
   */
  double floorBeside(int k) {
    double perBin = (double) padded / x.length;
    double[] beside = new double[2 * (FARTHEST - NEAREST + 1)];
    int count = 0;
    for (int away = NEAREST; away <= FARTHEST; away++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        int i = (int) Math.round((k + sign * away) * perBin);
        if (i > perBin && i <= padded / 2) {
          beside[count++] = power[i];
        }
      }
    }
    Arrays.sort(beside, 0, count);
    return count == 0 ? 0 : Math.sqrt(beside[count / 2]) / RAYLEIGH;
  }

  /** |X[k]| on the grid of the sequence's own length. */
  double magnitude(int k) {
    int n = x.length;
    double step = -2 * Math.PI * k / n;
    double stepCos = Math.cos(step);
    double stepSin = Math.sin(step);
    double re = 0;
    double im = 0;
    for (int start = 0; start < n; start += RESYNC) {
      double angle = -2 * Math.PI * ((long) k * start % n) / n;
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      for (int i = start; i < Math.min(n, start + RESYNC); i++) {
        re += x[i] * c;
        im += x[i] * s;
        double turned = c * stepCos - s * stepSin;
        s = c * stepSin + s * stepCos;
        c = turned;
      }
    }
    return Math.hypot(re, im);
  }

  /** |X|² at 0 … padded/2, from one transform of half the size (even and odd samples as re, im). */
  private double[] power() {
    int half = padded / 2;
    double[] re = new double[half];
    double[] im = new double[half];
    for (int i = 0; i < x.length; i++) {
      ((i & 1) == 0 ? re : im)[i >> 1] = x[i];
    }
    new Fft(half).transform(re, im);
    double[] squares = new double[half + 1];
    for (int k = 0; k <= half; k++) {
      int a = k % half;
      int b = (half - k) % half;
      double evenRe = (re[a] + re[b]) / 2;
      double evenIm = (im[a] - im[b]) / 2;
      double oddRe = (im[a] + im[b]) / 2;
      double oddIm = (re[b] - re[a]) / 2;
      double angle = -Math.PI * k / half;
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      double real = evenRe + oddRe * c - oddIm * s;
      double imaginary = evenIm + oddRe * s + oddIm * c;
      squares[k] = real * real + imaginary * imaginary;
    }
    return squares;
  }
}
