package corewright.bench.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken for a vehicle's number or a secret, and what of a shop's ordinary notes is not. */
class UnsaidTest {
  /** 11111111111111111 and 1M8GDM9AXKP042788 are the examples by which check digits are taught. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1M8GDM9AXKP042788",
        "no start, 1m8gdm9axkp042788, since Monday",
        "WZZ7X0Y12J7123456 tows it",
        "VIN WZZ 7X0 Y12J 7123456",
        "chassis no. WZZ-7X0Y12J7-123456"
      })
  void vehiclesAreLeftOut(String text) {
    assertTrue(VehicleNumbers.in(text), text);
    assertTrue(VehicleNumbers.without(text).contains(VehicleNumbers.LEFT_OUT));
    assertFalse(VehicleNumbers.in(VehicleNumbers.without(text)));
  }

  @Test
  void whatStandsAboutItStays() {
    assertEquals(
        "no start, (vehicle number left out), since Monday",
        VehicleNumbers.without("no start, 1M8GDM9AXKP042788, since Monday"));
  }

  /** Without the check digit and without four digits at the end it is some other word. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1M8GDM9A1KP04278X",
        "4417-2208 and 0698-114, both read twice",
        "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
        "Vin drops to 9.4 V while cranking, 3 times in 20 s",
        "12345678901234567",
        "{\"u\":1.5777218104420236E-30,\"v\":4.1111111111111111E5}",
        "U-000017-A1, bench-1:1042:9f86d081884c7d65, 2026-11-29T17:10:00Z"
      })
  void otherNumbersStay(String text) {
    assertEquals(text, VehicleNumbers.without(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the PIN is 4711, they said | PIN",
        "PIN code: 0815 | PIN code",
        "key code 1A2B3C | key code",
        "Key number = 55-1208 | Key number",
        "immobiliser code 83921 | immobiliser code",
        "immobilizer pin: 5512 | immobilizer pin",
        "transponder key 7F3A09 | transponder key",
        "security code 4471, from the glove box | security code",
        "security access, level 1, seed 3F 2A 91 BC | security access",
        "Wegfahrsperren-Code: 48213 | Wegfahrsperren-Code",
        "Schlüsselcode 12AB77 | Schlüsselcode"
      })
  void secretsAreFound(String text, String named) {
    assertEquals(Optional.of(named), Secrets.in(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pin 4 corroded, pins 12-14 bent",
        "Pin 1: 2200 ohm to ground",
        "pin 4700 Ω to case, others open",
        "PIN 17 and 18 swapped in the harness 2019",
        "key code lost by the customer, new keys ordered",
        "immobiliser light stays on, 3 keys tried",
        "immobiliser paired by a licensed locksmith on 3 Nov",
        "programmed by J. Orrel, registration seen; codes not kept",
        "security seal 004711 intact",
        "four security TX20 screws, one rounded",
        "ignition code P0351 stored, immobiliser code B1600 came back",
        "transponder reads fine after 20 tries",
        "key revision 3, build B2, label SD 12/48 0698-B",
        "DTC P1351 and U0140, sets after 1200 rpm",
        "no start below 5 °C, cranks for 4 s, 11.2 V at rest",
        "key-off current 4.2 mA, key off 1500 s",
        "ground lead 0.35 ohm; starter 2012 replaced; seed of rust at pin 3",
        "ESD strap worn; security access needed after fitting, done by the dealer in 2026"
      })
  void ordinaryNotesOfTheTradeAreKept(String text) {
    assertEquals(Optional.empty(), Secrets.in(text));
  }
}
