package corewright.measures.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.measures.trend.Relaxation;
import corewright.measures.uncertainty.Budget;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CapacitorTest {

  /** E = CV²/2, t = RC·ln(V0/V): by hand and with numpy. */
  @ParameterizedTest
  @CsvSource({
    "1000e-6, 48, 2200, 5, 1.152, 4.975878817",
    "470e-6, 60, 10000, 30, 0.846, 3.257791749",
    "2200e-6, 52, 1500, 10, 2.9744, 5.440573464",
    "100e-6, 400, 100000, 60, 8.0, 18.971199849",
  })
  void energyAndTimeToDischarge(double c, double v0, double r, double v, double energy, double t) {
    Measurement e =
        Capacitor.energy(new Measurement(c, 0, Unit.FARAD), new Measurement(v0, 0, Unit.VOLT))
            .result();
    assertEquals(energy, e.value(), 1e-12);
    assertEquals(t, Capacitor.dischargeTime_s(c, r, v0, v), 5e-10);
  }

  /** 1000 µF through 2.2 kΩ: 48 V, and after 2 s 19.338735 V; C comes back, with u of both. */
  @Test
  void capacitanceFromDecay() {
    double[] t = new double[50];
    double[] v = new double[50];
    for (int i = 0; i < t.length; i++) {
      t[i] = i / 10.0;
      v[i] = 48 * Math.exp(-t[i] / 2.2);
    }
    assertEquals(19.338735, v[20], 5e-7);
    Relaxation decay = Relaxation.towards(0, t, v);
    Budget c = Capacitor.fromDecay(decay, new Measurement(2200, 22, Unit.OHM));
    assertEquals(1e-3, c.result().value(), 1e-13);
    assertEquals(1e-5, c.result().u(), 1e-11); // 1 % of the resistor, none of an exact decay
    assertEquals(Unit.FARAD, c.result().unit());
  }

  @Test
  void refusesADischargeToNothing() {
    assertThrows(
        IllegalArgumentException.class, () -> Capacitor.dischargeTime_s(1e-3, 2200, 48, 0));
    assertThrows(
        IllegalArgumentException.class, () -> Capacitor.dischargeTime_s(1e-3, 2200, 5, 48));
  }
}
