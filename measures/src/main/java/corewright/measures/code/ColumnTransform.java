package corewright.measures.code;

import java.util.function.IntConsumer;

/**
 * Discrete Fourier transform of every column of a matrix of 256 rows at once, in place: four stages
 * of radix 4, decimation in frequency. Row p then holds frequency {@link #frequency}(p).
 *
 * <p>Works depth first: a quarter, once split off, is finished before the next is begun, so that
 * its rows are still near the processor.
 */
final class ColumnTransform {
  private static final int ROWS = 256;
  private static final int RADIX = 4;

  /** Rows that are handed on together. */
  static final int BATCH = 16;

  /** Cosine and −sine of 2πj/256. */
  private static final float[] COS = new float[ROWS];

  private static final float[] SIN = new float[ROWS];

  static {
    for (int j = 0; j < ROWS; j++) {
      COS[j] = (float) Math.cos(2 * Math.PI * j / ROWS);
      SIN[j] = (float) -Math.sin(2 * Math.PI * j / ROWS);
    }
  }

  private final float[][] re;
  private final float[][] im;
  private final IntConsumer done;

  /**
   * @param done told the first row of each {@value #BATCH} when they are finished
   */
  ColumnTransform(float[][] re, float[][] im, IntConsumer done) {
    this.re = re;
    this.im = im;
    this.done = done;
  }

  void run() {
    transform(0, ROWS);
  }

  /** Which frequency a row holds: its number with the four digits to base 4 in reverse. */
  static int frequency(int row) {
    int reversed = 0;
    for (int rest = row, i = 0; i < 4; i++, rest /= RADIX) {
      reversed = RADIX * reversed + rest % RADIX;
    }
    return reversed;
  }

  private void transform(int first, int count) {
    int quarter = count / RADIX;
    for (int r = 0; r < quarter; r++) {
      Rows.butterfly(re, im, first + r, quarter);
      if (r > 0) {
        for (int k = 1; k < RADIX; k++) {
          int row = first + r + k * quarter;
          int angle = ROWS / count * r * k;
          Rows.turn(re[row], im[row], COS[angle], SIN[angle]);
        }
      }
    }
    if (quarter > 1) {
      for (int k = 0; k < RADIX; k++) {
        transform(first + k * quarter, quarter);
      }
    }
    if (count == BATCH) {
      done.accept(first);
    }
  }
}
