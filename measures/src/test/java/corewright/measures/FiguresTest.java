package corewright.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** U = 2u, at most two significant figures (JCGM 100:2008, 7.2.6); the test locale has a comma. */
class FiguresTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "43.2841   | 0.01    | 43.28 ± 0.02 V   | 46.50 V",
        "43.2841   | 0.05    | 43.28 ± 0.10 V   | 46.50 V", // U begins with 1: two figures
        "43.2841   | 0.048   | 43.28 ± 0.10 V   | 46.50 V", // 0.096 rounds up into the next decade
        "43.2841   | 0.0013  | 43.284 ± 0.003 V | 46.500 V",
        "43.2841   | 0.0106  | 43.28 ± 0.03 V   | 46.50 V", // 0.02 would be 6 % too good: EA-4/02
        "43.2841   | 0.0104  | 43.28 ± 0.02 V   | 46.50 V",
        "43.2841   | 0.22    | 43.3 ± 0.5 V     | 46.5 V", // 0.44: never told as 0.4
        "-0.0004   | 0.01    | 0.00 ± 0.02 V    | 46.50 V", // no minus before a zero
        "-12.5     | 0.5     | −12.5 ± 1.0 V    | 46.5 V",
        "101368.47 | 30      | 101368 ± 60 V    | 46.5 V", // 47 would be another limit
        "48        | 0       | 48.00 V          | 46.50 V",
        "48.00012  | 0.00002 | 48.000 ± 0.001 V | 46.500 V", // millivolts are the finest, U never 0
        "0.00081   | 0.00001 | 0.00081 ± 0.00002 V | 46.500 V", // 0.001 ± 0.001 would hide it
        "0.0051    | 0.0001  | 0.0051 ± 0.0002 V   | 46.500 V",
        "0.0000012 | 1e-7    | 0.00000 ± 0.00001 V | 46.500 V", // ten microvolts, and no more
        "0.00081   | 0.001   | 0.001 ± 0.002 V     | 46.500 V", // not more than its U
      })
  void valueUncertaintyAndLimitEndAtTheSameDigit(
      double value, double u, String withU, String limit) {
    Measurement m = new Measurement(value, u, Unit.VOLT);
    assertEquals(withU, Figures.withU(m));
    assertEquals(limit, Figures.like(46.5, m));
  }

  @ParameterizedTest
  @CsvSource({"8, 0, 8", "0, 0, 0", "1.5, 0.01, 1.50 ± 0.02"})
  void aCountIsAnIntegerAndARatioHasNoUnit(double value, double u, String words) {
    assertEquals(words, Figures.withU(new Measurement(value, u, Unit.ONE)));
  }
}
