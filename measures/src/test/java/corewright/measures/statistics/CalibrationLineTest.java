package corewright.measures.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** JCGM 100:2008, H.3: calibration of a thermometer, as printed there. */
class CalibrationLineTest {
  private static final double[] T = Reference.column("/reference/gum_h3.csv", 0);
  private static final double[] B = Reference.column("/reference/gum_h3.csv", 1);

  @Test
  void agreesWithTheGuide() {
    CalibrationLine line = CalibrationLine.of(20, T, B, new double[T.length]);
    assertEquals(-0.1712, line.zero(), 0.00005);
    assertEquals(0.0029, line.uZero(), 0.00005);
    assertEquals(0.00218, line.slope(), 0.000005);
    assertEquals(0.00067, line.uSlope(), 0.000005);
    assertEquals(-0.930, line.correlation(), 0.0005);
    assertEquals(-0.1494, line.errorAt(30), 0.00005);
    assertEquals(0.0041, line.uAt(30), 0.00005);
  }

  /** Closed form: with equal u, u²(slope) = u²/Σ(x − mean)²; more scatter than stated counts. */
  @Test
  void statedUncertaintiesAreTheLeast() {
    double[] x = {0, 1, 2, 3, 4};
    double[] u = {0.1, 0.1, 0.1, 0.1, 0.1};
    CalibrationLine exact = CalibrationLine.of(0, x, new double[] {1, 3, 5, 7, 9}, u);
    assertEquals(2, exact.slope(), 1e-12);
    assertEquals(0.1 / Math.sqrt(10), exact.uSlope(), 1e-12);
    CalibrationLine rough = CalibrationLine.of(0, x, new double[] {2, 2, 5, 8, 8}, u);
    assertEquals(rough.scatter() * 0.1 / Math.sqrt(10), rough.uSlope(), 1e-12);
    double[] some = u.clone();
    some[0] = 0;
    assertThrows(IllegalArgumentException.class, () -> CalibrationLine.of(0, x, x, some));
  }

  /** A level that is known ten times worse hardly moves the line. */
  @Test
  void aLevelCountsByWhatIsKnownOfIt() {
    double[] x = {0, 1, 2, 3, 4};
    double[] u = {1, 1, 1, 1, 1e6};
    double[] y = {0, 1, 2, 3, 40};
    assertEquals(1, CalibrationLine.of(0, x, y, u).slope(), 1e-6);
    assertEquals(
        1,
        CalibrationLine.of(0, Arrays.copyOf(x, 4), Arrays.copyOf(y, 4), Arrays.copyOf(u, 4))
            .slope(),
        1e-12);
  }
}
