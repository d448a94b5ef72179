package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.HandReading;
import corewright.measures.Unit;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prefixes as the SI Brochure has them, 9th edition, table 7; U is k = 2 (JCGM 100, 6.2.1). */
class HandEntryTest {
  private static final Profile FINAL = Catalogue.ofHome().profile("sd48-final");

  @ParameterizedTest
  @CsvSource({
    "insulation, '5.2', '0.3', MΩ, 5.2e6, 0.15e6",
    "insulation, '5,2', '0,3', GΩ, 5.2e9, 0.15e9",
    "key-off, '1.2', '0.1', mA, 1.2e-3, 0.05e-3",
    "key-off, '950', '20', µA, 950e-6, 10e-6",
    "key-off, '0.0012', '1e-4', '', 1.2e-3, 0.05e-3",
    "cold, '46.31', '0.05', V, 46.31, 0.025",
    "tap, '−120', '20', mV, -0.12, 0.01",
    "pins, '0', '', '', 0, 0",
    "pins, '2', '0', '', 2, 0"
  })
  void isReadInTheUnitOfItsQuantity(
      String id, String value, String half, String unit, double si, double u) {
    HandReading read = HandEntry.of(step(id), value, half, unit, " meter 4 ", "I. Marsh");
    assertEquals(si, read.value().value(), 1e-9 * Math.abs(si));
    assertEquals(u, read.value().u(), 1e-9 * u);
    assertEquals("Entered by hand by I. Marsh, read with meter 4.", read.sentence());
  }

  @ParameterizedTest
  @CsvSource({
    "insulation, '', '0.3', MΩ, meter 4, the value is missing",
    "insulation, 5.2, '', MΩ, meter 4, ± U is missing",
    "insulation, 5.2, 0, MΩ, meter 4, no instrument reads so well",
    "insulation, 5.2, -0.3, MΩ, meter 4, no instrument reads so well",
    "insulation, -5.2, 0.3, MΩ, meter 4, less than 0 Ω",
    "insulation, 5.2, 0.3, V, meter 4, not read in V",
    "insulation, 5.2, 0.3, MΩ, '', read with is missing",
    "key-off, '1,000.5', 0.3, mA, meter 4, is no number",
    "key-off, NaN, 0.3, mA, meter 4, is no number",
    "pins, 1.5, '', '', table, whole number",
    "pins, -1, '', '', table, whole number",
    "pins, 1, 1, '', table, whole number"
  })
  void whatIsNoReadingIsRefusedByName(
      String id, String value, String half, String unit, String instrument, String told) {
    Refused refused =
        assertThrows(
            Refused.class, () -> HandEntry.of(step(id), value, half, unit, instrument, "I. Marsh"));
    String what = String.valueOf(refused.getMessage());
    assertTrue(what.contains(told), what);
    assertTrue(what.startsWith(HandEntry.quantity(step(id)).title()), what);
  }

  @Test
  void aLimitIsSaidAsAnInstrumentShowsIt() {
    assertEquals("MΩ", HandEntry.suiting(1e6, Unit.OHM).symbol());
    assertEquals("mA", HandEntry.suiting(0.003, Unit.AMPERE).symbol());
    assertEquals("V", HandEntry.suiting(0.5, Unit.VOLT).symbol());
    assertEquals("", HandEntry.suiting(0, Unit.ONE).symbol());
  }

  private static Step step(String id) {
    return HandEntry.possible(FINAL).stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
