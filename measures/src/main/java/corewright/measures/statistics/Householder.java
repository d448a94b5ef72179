package corewright.measures.statistics;

/**
 * A matrix as orthogonal times triangular, columns scaled to length 1 first. Keeps the reflections
 * and never forms the orthogonal factor, so a long record with two columns costs no more than its
 * own size.
 *
 * @see "Golub and Van Loan, Matrix Computations, 5.2.1"
 */
final class Householder {
  /** Diagonal below this, in columns of length 1: the column depends on those before it. */
  private static final double SINGULAR = 1e-14;

  private final int rows;
  private final int columns;
  private final double[][] v; // v[j]: reflection j, zero above j
  private final double[][] r; // r[j]: column j of the triangle
  private final double[] scale;

  /**
   * @param a rows × columns, not changed
   * @throws IllegalArgumentException if a column is a combination of those before it
   */
  Householder(double[][] a) {
    rows = a.length;
    columns = a[0].length;
    v = new double[columns][];
    r = new double[columns][];
    scale = new double[columns];
    for (int j = 0; j < columns; j++) {
      double[] column = new double[rows];
      double squares = 0;
      for (int i = 0; i < rows; i++) {
        column[i] = a[i][j];
        squares += column[i] * column[i];
      }
      scale[j] = Math.sqrt(squares);
      for (int i = 0; i < rows; i++) {
        column[i] = scale[j] == 0 ? 0 : column[i] / scale[j];
      }
      for (int k = 0; k < j; k++) {
        reflect(v[k], k, column);
      }
      v[j] = reflection(column, j);
      reflect(v[j], j, column);
      if (!(Math.abs(column[j]) > SINGULAR)) {
        throw new IllegalArgumentException(
            "column " + j + " of the model is a combination of the columns before it");
      }
      r[j] = column;
    }
  }

  /** Qᵀx, in place. */
  void transposed(double[] x) {
    for (int k = 0; k < columns; k++) {
      reflect(v[k], k, x);
    }
  }

  /** Qx, in place. */
  void rotate(double[] x) {
    for (int k = columns - 1; k >= 0; k--) {
      reflect(v[k], k, x);
    }
  }

  /** Solves R·D·x = y, D the lengths of the columns, with the first entries of y. */
  double[] backward(double[] y) {
    double[] x = new double[columns];
    for (int j = columns - 1; j >= 0; j--) {
      double sum = y[j];
      for (int k = j + 1; k < columns; k++) {
        sum -= r[k][j] * x[k];
      }
      x[j] = sum / r[j][j];
    }
    for (int j = 0; j < columns; j++) {
      x[j] /= scale[j];
    }
    return x;
  }

  /** Solves (R·D)ᵀ·x = y. */
  double[] forward(double[] y) {
    double[] x = new double[columns];
    for (int j = 0; j < columns; j++) {
      double sum = y[j] / scale[j];
      for (int k = 0; k < j; k++) {
        sum -= r[j][k] * x[k];
      }
      x[j] = sum / r[j][j];
    }
    return x;
  }

  private double[] reflection(double[] column, int from) {
    double squares = 0;
    for (int i = from; i < rows; i++) {
      squares += column[i] * column[i];
    }
    double[] w = column.clone();
    w[from] += Math.copySign(Math.sqrt(squares), column[from]);
    double length = 0;
    for (int i = from; i < rows; i++) {
      length += w[i] * w[i];
    }
    double norm = length == 0 ? 1 : Math.sqrt(length / 2);
    for (int i = 0; i < rows; i++) {
      w[i] = i < from ? 0 : w[i] / norm;
    }
    return w;
  }

  private void reflect(double[] w, int from, double[] x) {
    double dot = 0;
    for (int i = from; i < rows; i++) {
      dot += w[i] * x[i];
    }
    for (int i = from; i < rows; i++) {
      x[i] -= dot * w[i];
    }
  }
}
