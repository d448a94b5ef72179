package corewright.measures.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.temperature.SteinhartHart.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermistorTest {
  private static final SteinhartHart CURVE =
      SteinhartHart.through(new Point(25_000, 5), new Point(10_000, 25), new Point(4_000, 45));

  /** Published calculator example (from memory); further digits from mpmath. */
  @Test
  void findsTheCoefficients() {
    assertEquals(2.10850817311e-3, CURVE.a(), 5e-14);
    assertEquals(7.97920472678e-5, CURVE.b(), 5e-15);
    assertEquals(6.53507631465e-7, CURVE.c(), 5e-17);
  }

  /** mpmath, 10 digits; the three points themselves come back. */
  @ParameterizedTest
  @CsvSource({
    "50000, -9.964604712",
    "20000, 9.855847498",
    "5000, 40.14418747",
    "1000, 74.66399599",
    "25000, 5",
    "10000, 25",
    "4000, 45"
  })
  void readsTemperatures(double ohm, double t) {
    assertEquals(t, CURVE.temperature_C(ohm), 6e-9);
  }

  /** 10 kΩ, 3950 K: mpmath, 9 digits. */
  @ParameterizedTest
  @CsvSource({
    "-40, 401859.725",
    "0, 33620.6037",
    "25, 10000",
    "50, 3588.18258",
    "85, 1086.67077",
    "125, 358.833877"
  })
  void betaBothWays(double t, double ohm) {
    BetaThermistor ntc = new BetaThermistor(10_000, 3950);
    assertEquals(1, ntc.resistance_ohm(t) / ohm, 2e-9);
    assertEquals(t, ntc.temperature_C(ohm), 1e-6);
  }

  @Test
  void refusesWhatIsNoThermistor() {
    assertThrows(IllegalArgumentException.class, () -> CURVE.temperature_C(0));
    assertThrows(
        IllegalArgumentException.class, () -> CURVE.temperature_C(Double.POSITIVE_INFINITY));
    Point same = new Point(10_000, 25);
    assertThrows(
        IllegalArgumentException.class,
        () -> SteinhartHart.through(same, same, new Point(4000, 45)));
    assertThrows(IllegalArgumentException.class, () -> new Point(-1, 25));
    assertThrows(IllegalArgumentException.class, () -> new BetaThermistor(10_000, -1));
    assertThrows(
        IllegalArgumentException.class, () -> new BetaThermistor(1, 1).temperature_C(Double.NaN));
  }
}
