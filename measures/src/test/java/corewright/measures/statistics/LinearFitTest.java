package corewright.measures.statistics;

import static corewright.measures.StrdFile.assertDigits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import corewright.measures.StrdFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinearFitTest {

  /**
   * Certified by NIST; digits reached of coefficients and of their deviations. Filip's powers up to
   * x¹⁰ are rounded to doubles before the fit sees them: 100-digit arithmetic (mpmath) on the
   * rounded powers reaches the same 7.61 digits, and 14 on exact ones.
   */
  @ParameterizedTest
  @CsvSource({
    "Norris,   1,  14.0, 13.9",
    "Pontius,  2,  13.5, 13.7",
    "Filip,    10, 7.6,  7.5",
    "Wampler1, 5,  15,   15",
    "Wampler2, 5,  13.2, 15",
    "Wampler3, 5,  15,   13.4",
    "Wampler4, 5,  15,   13.4",
    "Wampler5, 5,  15,   13.4",
  })
  void agreesWithNistOnPolynomials(String name, int degree, double ofValues, double ofScatter) {
    StrdFile file = StrdFile.read(name);
    check(file, LinearFit.polynomial(file.column(1), file.column(0), degree), ofValues, ofScatter);
  }

  @ParameterizedTest
  @CsvSource({
    "Longley, true,  14.6, 12.9",
    "NoInt1,  false, 14.7, 15",
    "NoInt2,  false, 15,   14.8",
  })
  void agreesWithNistOnColumns(String name, boolean constant, double ofValues, double ofScatter) {
    StrdFile file = StrdFile.read(name);
    double[][] data = file.data();
    double[][] model = new double[data.length][];
    for (int i = 0; i < data.length; i++) {
      model[i] = data[i].clone();
      if (constant) {
        model[i][0] = 1;
      } else {
        model[i] = new double[] {data[i][1]};
      }
    }
    check(file, LinearFit.of(model, file.column(0)), ofValues, ofScatter);
  }

  private static void check(StrdFile file, LinearFit fit, double ofValues, double ofScatter) {
    List<double[]> certified = file.parameters();
    for (int k = 0; k < certified.size(); k++) {
      assertDigits(ofValues, fit.coefficient(k), certified.get(k)[0], "B" + k);
      assertDigits(ofScatter, fit.u(k), certified.get(k)[1], "deviation of B" + k);
    }
    double[] sd = file.certified("Standard Deviation");
    assertDigits(ofScatter, fit.residualSd(), sd[sd.length - 1], "residual deviation");
    assertDigits(ofScatter, fit.rSquared(), file.certified("R-Squared")[0], "R squared");
  }

  /** JCGM 100:2008, H.3: calibration of a thermometer; printed digits, then recomputed ones. */
  @Test
  void fitsTheThermometerOfTheGuide() {
    double[] t = Reference.column("/reference/gum_h3.csv", 0);
    double[] b = Reference.column("/reference/gum_h3.csv", 1);
    for (int i = 0; i < t.length; i++) {
      t[i] -= 20;
    }
    LinearFit fit = LinearFit.line(t, b);
    assertEquals(-0.1712, fit.coefficient(0), 0.5e-4);
    assertEquals(0.0029, fit.u(0), 0.5e-4);
    assertEquals(0.00218, fit.coefficient(1), 0.5e-5);
    assertEquals(0.00067, fit.u(1), 0.5e-5);
    assertEquals(-0.930, fit.correlation(0, 1), 0.5e-3);
    assertEquals(0.0035, fit.residualSd(), 0.5e-4);
    assertEquals(-0.1494, fit.at(1, 10), 0.5e-4);
    assertEquals(0.0041, fit.uAt(1, 10), 0.5e-4);
    assertEquals(9, fit.freedom());
    // numpy
    assertEquals(-0.17120379, fit.coefficient(0), 5e-9);
    assertEquals(0.00287760, fit.u(0), 5e-9);
    assertEquals(0.0021826977, fit.coefficient(1), 5e-11);
    assertEquals(0.0006679388, fit.u(1), 5e-11);
    assertEquals(-0.930430, fit.correlation(0, 1), 5e-7);
    assertEquals(-0.14937681, fit.at(1, 10), 5e-9);
    assertEquals(0.00413860, fit.uAt(1, 10), 5e-9);
    assertEquals(0.000110096583109, fit.sumOfSquares(), 5e-16); // documentation of MSLNZ/GTC
  }

  @Test
  void refusesWhatCannotBeFitted() {
    double[] two = {1, 2};
    assertThrows(IllegalArgumentException.class, () -> LinearFit.line(two, two));
    double[] same = {5, 5, 5};
    assertThrows(
        IllegalArgumentException.class, () -> LinearFit.line(same, new double[] {1, 2, 3}));
    assertThrows(
        IllegalArgumentException.class, () -> LinearFit.of(new double[3][1], new double[] {1}));
  }
}
