package corewright.bench.triage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

  private static Decision decide(String inputs) {
    return Triage.decide(Space.plainBut(inputs), Facts.NONE, LocalDate.of(2024, 3, 4));
  }
}
