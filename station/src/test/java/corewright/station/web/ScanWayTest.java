package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.life.Stage;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source: whoever stands at a place scans the next thing for that place. */
class ScanWayTest {
  @ParameterizedTest
  @CsvSource({
    "/, /unit/U-1",
    "/unit/U-9, /unit/U-1",
    "/shop?family=sd48, /unit/U-1",
    "/build, /build/U-1",
    "/build/U-9/condition, /build/U-1",
    "/decide/U-9?x=1, /decide/U-1",
    "/rebuild/U-9, /rebuild/U-1",
    "/bench/bench-1, /bench/bench-1?tag=U-1",
    "/bench/bench-1?tag=U-9, /bench/bench-1?tag=U-1",
    "/counter, /counter/U-1",
    "//evil.example/build, /unit/U-1",
    "https://evil.example/build, /unit/U-1",
    "/build.evil, /unit/U-1",
  })
  void aUnitComesToThePlaceWhereItWasScanned(String from, String to) {
    assertEquals(to, ScanWay.ofUnit(from, "U-1", Stage.TESTED));
  }

  @Test
  void atTheCounterAUnitThatHasLeftBeginsItsNextVisitAndANewSerialIsTaken() {
    assertEquals("/counter?tag=U-1", ScanWay.ofUnit("/counter?serial=x", "U-1", Stage.SHIPPED));
    assertEquals(
        Optional.of("/counter?serial=A+%26+B"), ScanWay.ofOther("/counter/U-9", "A & B", false));
    assertEquals(
        Optional.of("/counter?quote=R-000016"), ScanWay.ofOther("/counter", "R-000016", false));
  }

  @Test
  void aLotGoesToTheRebuildAndASealToTheUnitThatIsHandedOver() {
    assertEquals(
        Optional.of("/rebuild/U-9?lot=LOT-7"), ScanWay.ofOther("/rebuild/U-9", "LOT-7", true));
    assertEquals(Optional.empty(), ScanWay.ofOther("/rebuild/U-9", "8120", false));
    assertEquals(
        Optional.of("/handover/U-9?seal=8120"), ScanWay.ofOther("/handover/U-9", "8120", false));
    assertEquals(Optional.empty(), ScanWay.ofOther("/handover", "8120", false));
    assertEquals(Optional.empty(), ScanWay.ofOther("/shop", "8120", false));
  }
}
