package corewright.bench.triage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OverrulingTest {

  @Test
  void whoAndWhyStandFirstAndTheRowIsKept() {
    Decision decision =
        Overruling.of(decide(""), Disposition.REPLACE, "exchange", "R. Acker", "It is due today.");
    assertEquals("D81 overruled", decision.row());
    assertEquals(Disposition.REPLACE, decision.disposition());
    assertEquals(
        "R. Acker decided otherwise than D81, which says REBUILD: It is due today.",
        decision.reasons().get(0));
    assertEquals(decide("").saw(), decision.saw());
  }

  @Test
  void withoutNameOrReasonItIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Overruling.of(decide(""), Disposition.REPLACE, "exchange", " ", "why"));
    assertThrows(
        IllegalArgumentException.class,
        () -> Overruling.of(decide(""), Disposition.REPLACE, "exchange", "who", ""));
    assertThrows(
        IllegalArgumentException.class,
        () -> Overruling.of(decide(""), Disposition.PENDING, "exchange", "who", "why"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Safety=CHARGED", "Safety=WET", "Lock=DISPUTED"})
  void whatMayNotLeaveDoesNotLeaveByAWordEither(String state) {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> Overruling.of(decide(state), Disposition.RETURN, "customer", "who", "why"))
            .getMessage();
    assertTrue(message.contains(state.substring(state.indexOf('=') + 1)), message);
  }

  /** Each is forbidden by law or by the owner of the unit, whoever asks (common practice). */
  @ParameterizedTest
  @CsvSource({
    "Identity=UNCERTAIN, REBUILD, queue, UNCERTAIN build",
    "Evidence=VOID_INPUT Mode=STOCK, RETURN, stock, VOID",
    "Evidence=VOID_BENCH Mode=STOCK, RETURN, stock, VOID",
    "Approval=NOT_ASKED, REBUILD, queue, approval",
    "Approval=DECLINED, REPLACE, exchange, approval",
    "Mode=TEST_ONLY Approval=SILENT, REBUILD, queue, approval",
    "Claim=FIRST Mode=STOCK Approval=NOT_ASKED, REPLACE, exchange, approval",
    "Data=PAIRED Approval=NOT_ASKED, REPLACE, exchange, approval",
    "'', REPLACE, scrap, stock, parts or scrap",
    "'', RETURN, stock, stock, parts or scrap",
  })
  void whatLawOrOwnerForbidIsRefused(
      String inputs, Disposition to, String destination, String because) {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> Overruling.of(decide(inputs), to, destination, "who", "why"))
            .getMessage();
    assertTrue(message.contains(because), message);
  }

  @ParameterizedTest
  @CsvSource({
    "'', RETURN, customer",
    "Approval=NOT_ASKED, RETURN, customer",
    "Mode=STOCK Approval=NOT_ASKED, REBUILD, queue",
    "Mode=EXCHANGE, REPLACE, scrap",
  })
  void whatIsTheShopsToDecideIsAllowed(String inputs, Disposition to, String destination) {
    assertEquals(to, Overruling.of(decide(inputs), to, destination, "who", "why").disposition());
  }

  @Test
  void aPlaceThatDoesNotExistIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Overruling.of(decide(""), Disposition.RETURN, "the river", "who", "why"));
  }

  private static Decision decide(String inputs) {
    return Triage.decide(Space.plainBut(inputs), Facts.NONE, LocalDate.of(2024, 3, 4));
  }
}
