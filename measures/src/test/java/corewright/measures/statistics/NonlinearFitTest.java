package corewright.measures.statistics;

import static corewright.measures.StrdFile.assertDigits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.StrdFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NonlinearFitTest {

  /**
   * Certified by NIST to 11 digits; from both of its starting points. Digits reached of parameters,
   * of their deviations, of the sum of squares. The residuals of Lanczos1 are 1e-13 of its values:
   * a double leaves three digits of them.
   */
  @ParameterizedTest
  @CsvSource({
    "Bennett5, 10.4, 10.4, 10.9",
    "BoxBOD,   10.4, 10.2, 10.4",
    "Chwirut1, 10.4, 10.4, 11",
    "Chwirut2, 10.4, 10.4, 11",
    "DanWood,  10.4, 10.4, 11",
    "Eckerle4, 10.4, 10.4, 10.6",
    "ENSO,     10.4, 10.4, 11",
    "Gauss1,   10.4, 10.4, 11",
    "Gauss2,   10.3, 10.4, 10.5",
    "Gauss3,   10.4, 10.4, 10.9",
    "Hahn1,    10.4, 10.4, 10.5",
    "Kirby2,   10.4, 10.4, 11",
    "Lanczos1, 10.4, 2.9,  2.6",
    "Lanczos2, 10.3, 10.2, 10.0",
    "Lanczos3, 10.4, 10.4, 10.5",
    "MGH09,    10.4, 10.4, 11",
    "MGH10,    10.4, 10.4, 11",
    "MGH17,    10.4, 10.4, 11",
    "Misra1a,  10.4, 10.4, 10.4",
    "Misra1b,  10.4, 10.4, 11",
    "Misra1c,  10.4, 10.4, 11",
    "Misra1d,  10.4, 10.4, 11",
    "Rat42,    10.4, 10.4, 11",
    "Rat43,    10.4, 10.4, 11",
    "Roszman1, 10.4, 10.4, 11",
    "Thurber,  10.4, 10.4, 11",
  })
  void agreesWithNistFromBothStarts(
      String name, double ofValues, double ofScatter, double ofSquares) {
    StrdFile file = StrdFile.read(name);
    Curve curve = StrdCurve.ALL.get(name);
    check(file, curve, file.column(1), file.column(0), ofValues, ofScatter, ofSquares);
  }

  /** Two predictors: x is the number of the row. */
  @Test
  void agreesWithNistOnNelson() {
    StrdFile file = StrdFile.read("Nelson");
    double[][] data = file.data();
    double[] row = new double[data.length];
    double[] logs = new double[data.length];
    for (int i = 0; i < row.length; i++) {
      row[i] = i;
      logs[i] = Math.log(data[i][0]);
    }
    StrdCurve curve =
        (b, i) ->
            b[1].multiply(data[(int) i][1])
                .multiply(b[2].multiply(-data[(int) i][2]).exp())
                .negate()
                .add(b[0]);
    check(file, curve, row, logs, 9.9, 9.9, 10.9);
  }

  private static void check(
      StrdFile file,
      Curve curve,
      double[] x,
      double[] y,
      double ofValues,
      double ofScatter,
      double ofSquares) {
    List<double[]> rows = file.parameters();
    for (int from = 0; from < 2; from++) {
      double[] start = new double[rows.size()];
      for (int k = 0; k < start.length; k++) {
        start[k] = rows.get(k)[from];
      }
      NonlinearFit fit = NonlinearFit.of(curve, x, y, start);
      String where = "from start " + (from + 1);
      for (int k = 0; k < start.length; k++) {
        assertDigits(ofValues, fit.parameter(k), rows.get(k)[2], where + ": b" + (k + 1));
        assertDigits(ofScatter, fit.u(k), rows.get(k)[3], where + ": deviation of b" + (k + 1));
      }
      double squares = file.certified("Residual Sum of Squares")[0];
      assertDigits(ofSquares, fit.sumOfSquares(), squares, where + ": squares");
      double sd = file.certified("Residual Standard Deviation")[0];
      assertDigits(Math.min(10.4, ofSquares), fit.residualSd(), sd, where + ": residual deviation");
      // Not the printed degrees of freedom: those of Rat43 do not fit its own deviations.
      assertEquals(file.certified("Number of Observations")[0], fit.freedom() + start.length);
    }
  }

  @Test
  void refusesWhatItCannotFit() {
    Curve curve = StrdCurve.ALL.get("Misra1a");
    double[] two = {1, 2};
    IllegalArgumentException tooFew =
        assertThrows(
            IllegalArgumentException.class, () -> NonlinearFit.of(curve, two, two, 1, 0.1));
    assertEquals(
        "a fit needs more points than parameters: 2 x, 2 y, 2 parameters", tooFew.getMessage());
    double[] x = {1, 2, 3};
    assertThrows(
        IllegalArgumentException.class,
        () -> NonlinearFit.of(curve, x, new double[] {1, Double.NaN, 3}, 1, 0.1));
  }
}
