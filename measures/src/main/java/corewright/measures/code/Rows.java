package corewright.measures.code;

/**
 * What the transform does to whole rows of {@value #LENGTH} floats. Each loop does one thing at one
 * index of arrays that are never the same, so that the compiler makes vector instructions of it; a
 * butterfly and its rotations in one loop it does not.
 */
final class Rows {
  static final int LENGTH = 256;

  private Rows() {}

  /** Butterfly of radix 4 over rows {@code at}, {@code at + apart}, … of both parts. */
  static void butterfly(float[][] re, float[][] im, int at, int apart) {
    butterfly(
        re[at],
        re[at + apart],
        re[at + 2 * apart],
        re[at + 3 * apart],
        im[at],
        im[at + apart],
        im[at + 2 * apart],
        im[at + 3 * apart]);
  }

  private static void butterfly(
      float[] re0,
      float[] re1,
      float[] re2,
      float[] re3,
      float[] im0,
      float[] im1,
      float[] im2,
      float[] im3) {
    for (int i = 0; i < LENGTH; i++) {
      float sumRe = re0[i] + re2[i];
      float sumIm = im0[i] + im2[i];
      float lessRe = re0[i] - re2[i];
      float lessIm = im0[i] - im2[i];
      float oddSumRe = re1[i] + re3[i];
      float oddSumIm = im1[i] + im3[i];
      float turnedRe = im1[i] - im3[i]; // (x1 − x3)·(−i)
      float turnedIm = re3[i] - re1[i];
      re0[i] = sumRe + oddSumRe;
      im0[i] = sumIm + oddSumIm;
      re1[i] = lessRe + turnedRe;
      im1[i] = lessIm + turnedIm;
      re2[i] = sumRe - oddSumRe;
      im2[i] = sumIm - oddSumIm;
      re3[i] = lessRe - turnedRe;
      im3[i] = lessIm - turnedIm;
    }
  }

  /** Multiplies a row by cos + i·sin. */
  static void turn(float[] re, float[] im, float cos, float sin) {
    float minusSin = -sin;
    for (int i = 0; i < LENGTH; i++) {
      float x = re[i];
      float y = im[i];
      re[i] = Math.fma(y, minusSin, x * cos);
      im[i] = Math.fma(x, sin, y * cos);
    }
  }

  /** Multiplies each place of a row by its own cos + i·sin. */
  static void turn(float[] re, float[] im, float[] cos, float[] sin) {
    for (int i = 0; i < LENGTH; i++) {
      float x = re[i];
      float y = im[i];
      re[i] = x * cos[i] - y * sin[i];
      im[i] = x * sin[i] + y * cos[i];
    }
  }

  /** Adds re² + im². */
  static void addPower(float[] power, float[] re, float[] im) {
    for (int i = 0; i < LENGTH; i++) {
      float x = re[i];
      float y = im[i];
      power[i] = Math.fma(x, x, Math.fma(y, y, power[i]));
    }
  }

  /**
   * (x − mean)·weight. As x·weight − mean·weight: x is whole, so the rounding of x − mean would be
   * the same for many x, and add up to a false mean.
   */
  static void weigh(float[] weighed, float[] x, float[] weight, float mean) {
    for (int i = 0; i < LENGTH; i++) {
      weighed[i] = Math.fma(-mean, weight[i], x[i] * weight[i]);
    }
  }

  /** Moves what has been added up into sums of more digits. */
  static void pour(double[] sums, float[] row) {
    for (int i = 0; i < LENGTH; i++) {
      sums[i] += row[i];
      row[i] = 0;
    }
  }

  /** Writes eight rows from {@code at} on as columns {@code at} to {@code at + 7} of another. */
  static void transpose8(float[][] columns, float[][] rows, int at) {
    float[] a = rows[at];
    float[] b = rows[at + 1];
    float[] c = rows[at + 2];
    float[] d = rows[at + 3];
    float[] e = rows[at + 4];
    float[] f = rows[at + 5];
    float[] g = rows[at + 6];
    float[] h = rows[at + 7];
    for (int i = 0; i < LENGTH; i++) {
      float[] column = columns[i];
      column[at] = a[i];
      column[at + 1] = b[i];
      column[at + 2] = c[i];
      column[at + 3] = d[i];
      column[at + 4] = e[i];
      column[at + 5] = f[i];
      column[at + 6] = g[i];
      column[at + 7] = h[i];
    }
  }
}
