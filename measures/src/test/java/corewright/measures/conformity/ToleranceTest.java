package corewright.measures.conformity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceTest {

  /** JCGM 106:2012, 7.6.3: Cm = T/(4u), by hand. */
  @Test
  void capability() {
    assertEquals(2.5, new Tolerance(-0.2, 0.2).capability(0.04), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> Tolerance.atLeast(1).capability(0.1));
  }

  /** ILAC-G8:09/2019, table of rules (from memory): each bound on the risk, and the exact one. */
  @ParameterizedTest
  @CsvSource({
    "SIX_SIGMA, 1e-6, 9.866e-10",
    "THREE_SIGMA, 0.0016, 0.00134990",
    "FULL, 0.025, 0.0227501",
    "ISO_14253_1, 0.05, 0.0484572",
    "SIMPLE_ACCEPTANCE, 0.50001, 0.5",
    "UNCRITICAL, 1, 0.9772499",
  })
  void risksOfTheUsualGuardBands(GuardBand band, double less, double exact) {
    assertTrue(band.specificRisk() < less);
    assertEquals(1, band.specificRisk() / exact, 1e-4);
  }

  @Test
  void guardBandsMoveLimitsInwards() {
    Tolerance accepts = new Tolerance(46.5, 49).guarded(GuardBand.FULL.width(0.04));
    assertEquals(46.58, accepts.low(), 1e-12);
    assertEquals(48.92, accepts.high(), 1e-12);
    assertEquals(46.58, Tolerance.atLeast(46.5).guarded(0.08).low(), 1e-12);
    assertEquals(48.92, Tolerance.atMost(49).guarded(0.08).high(), 1e-12);
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> new Tolerance(46.5, 46.6).guarded(0.06))
            .getMessage()
            .contains("nothing to accept"));
    assertThrows(IllegalArgumentException.class, () -> new Tolerance(2, 1));
  }
}
