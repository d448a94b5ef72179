package corewright.measures.code;

/**
 * Adds up the squared transforms of segments of 65,536 samples, two segments at a time as real and
 * imaginary part of one transform.
 *
 * <p>The segment is a matrix of 256 × 256 (sample 256·row + column). Its columns are transformed,
 * turned by e^(−2πi·row·column/65536), transposed, and transformed again; everything runs along
 * rows. What comes out is |Z|² of the two together; since both are real, the mean of the bins k and
 * n − k is the mean of their own two.
 */
final class SegmentPowers {
  static final int SIDE = Rows.LENGTH;
  static final int LENGTH = SIDE * SIDE;

  /** Floats carry the sums of so many pairs without losing digits that matter. */
  private static final int POUR_AFTER = 32;

  private static final float[][] TURN_COS = new float[SIDE][SIDE];
  private static final float[][] TURN_SIN = new float[SIDE][SIDE];

  static {
    for (int row = 0; row < SIDE; row++) {
      for (int column = 0; column < SIDE; column++) {
        double angle = -2 * Math.PI * (ColumnTransform.frequency(row) * column) / LENGTH;
        TURN_COS[row][column] = (float) Math.cos(angle);
        TURN_SIN[row][column] = (float) Math.sin(angle);
      }
    }
  }

  final float[][] re = new float[SIDE][SIDE];
  final float[][] im = new float[SIDE][SIDE];
  private final float[][] turnedRe = new float[SIDE][SIDE];
  private final float[][] turnedIm = new float[SIDE][SIDE];
  private final float[][] recent = new float[SIDE][SIDE];
  private final double[][] sums = new double[SIDE][SIDE];
  private final ColumnTransform first = new ColumnTransform(re, im, this::turnAndTranspose);
  private final ColumnTransform second = new ColumnTransform(turnedRe, turnedIm, this::addPowers);
  private int pairs;

  /** Adds the pair of segments that {@link #re} and {@link #im} hold; overwrites them. */
  void add() {
    first.run();
    second.run();
    pairs++;
    if (pairs % POUR_AFTER == 0) {
      pour();
    }
  }

  private void turnAndTranspose(int batch) {
    for (int row = batch; row < batch + ColumnTransform.BATCH; row++) {
      Rows.turn(re[row], im[row], TURN_COS[row], TURN_SIN[row]);
    }
    for (int row = batch; row < batch + ColumnTransform.BATCH; row += 8) {
      Rows.transpose8(turnedRe, re, row);
      Rows.transpose8(turnedIm, im, row);
    }
  }

  private void addPowers(int batch) {
    for (int row = batch; row < batch + ColumnTransform.BATCH; row++) {
      Rows.addPower(recent[row], turnedRe[row], turnedIm[row]);
    }
  }

  private void pour() {
    for (int row = 0; row < SIDE; row++) {
      Rows.pour(sums[row], recent[row]);
    }
  }

  /** Adds the sums of both segments of every pair to {@code powers}, bins 0 to 32,768. */
  void addTo(double[] powers) {
    pour();
    for (int row = 0; row < SIDE; row++) {
      for (int column = 0; column < SIDE; column++) {
        int bin = ColumnTransform.frequency(column) + SIDE * ColumnTransform.frequency(row);
        double half = sums[row][column] / 2;
        powers[Math.min(bin, LENGTH - bin)] += bin == 0 || 2 * bin == LENGTH ? 2 * half : half;
      }
    }
  }
}
