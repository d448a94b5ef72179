package corewright.measures.statistics;

import static corewright.measures.StrdFile.assertDigits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Reference;
import corewright.measures.StrdFile;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DescriptiveTest {

  /**
   * Certified by NIST. The last column is what a double can hold of the data: 10000000.1 is read
   * with an error of 2e-10, which is 2e-9 of a standard deviation of 0.1.
   */
  @ParameterizedTest
  @CsvSource({
    "Lew,      15, 14.8",
    "Lottery,  15, 14.9",
    "Mavro,    15, 13.1",
    "Michelso, 15, 13.4",
    "NumAcc1,  15, 15",
    "NumAcc2,  15, 15",
    "NumAcc3,  15, 9.4",
    "NumAcc4,  15, 8.2",
  })
  void agreesWithNist(String name, double digitsOfMean, double digitsOfScatter) {
    StrdFile file = StrdFile.read(name);
    double[] y = file.column(0);
    Descriptive d = Descriptive.of(y);
    assertDigits(digitsOfMean, d.mean(), file.certified("Sample Mean")[0], "mean");
    assertDigits(
        digitsOfScatter, d.sd(), file.certified("Sample Standard Deviation")[0], "deviation");
    assertDigits(
        digitsOfScatter,
        Autocorrelation.of(y, 1),
        file.certified("Sample Autocorrelation Coefficient")[0],
        "autocorrelation");
  }

  /** NIST's own list, which is not π: see the README of the data. */
  @Test
  void agreesWithNistOnTheDigitsOfPi() {
    double[] y =
        Reference.lines("/nist-strd/PiDigits.rebuilt.txt").stream()
            .filter(line -> !line.startsWith("#"))
            .mapToDouble(Double::parseDouble)
            .toArray();
    assertEquals(5000, y.length);
    Descriptive d = Descriptive.of(y);
    assertDigits(15, d.mean(), 4.53480000000000, "mean");
    assertDigits(15, d.sd(), 2.86733906028871, "deviation");
    assertDigits(15, Autocorrelation.of(y, 1), -0.00355099287237972, "autocorrelation");
  }

  /** Exact arithmetic on the same doubles: what is left is our own error. */
  @ParameterizedTest
  @ValueSource(strings = {"Lew", "Lottery", "Mavro", "Michelso", "NumAcc2", "NumAcc3", "NumAcc4"})
  void isExactToTheLastDigitForTheDoublesItIsGiven(String name) {
    double[] y = StrdFile.read(name).column(0);
    MathContext precise = new MathContext(60);
    BigDecimal n = BigDecimal.valueOf(y.length);
    BigDecimal mean =
        Arrays.stream(y).mapToObj(BigDecimal::new).reduce(BigDecimal::add).orElseThrow();
    BigDecimal m = mean.divide(n, precise);
    BigDecimal squares =
        Arrays.stream(y)
            .mapToObj(v -> new BigDecimal(v).subtract(m).pow(2))
            .reduce(BigDecimal::add)
            .orElseThrow();
    double sd = squares.divide(n.subtract(BigDecimal.ONE), precise).sqrt(precise).doubleValue();
    Descriptive d = Descriptive.of(y);
    assertEquals(m.doubleValue(), d.mean(), Math.ulp(m.doubleValue()));
    assertEquals(sd, d.sd(), 2 * Math.ulp(sd));
  }

  /** JCGM 100:2008, 4.4.3, table 1: twenty temperatures; printed 100.14(5), 1.489 and 0.333. */
  @Test
  void readsTheTwentyTemperaturesOfTheGuide() {
    Descriptive d =
        Descriptive.of(
            96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42,
            100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72);
    assertEquals(100.145, d.mean(), 1e-12);
    assertEquals(1.4888444830595435, d.sd(), 1e-14); // numpy
    assertEquals(0.3329157472046673, d.ofMean(), 1e-14); // numpy
  }

  @Test
  void refusesWhatHasNoScatter() {
    assertThrows(IllegalArgumentException.class, () -> Descriptive.of(1.0));
    assertThrows(IllegalArgumentException.class, () -> Descriptive.of(1.0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Autocorrelation.of(new double[] {3, 3}, 1));
    assertThrows(IllegalArgumentException.class, () -> Autocorrelation.of(new double[] {3, 4}, 2));
  }
}
