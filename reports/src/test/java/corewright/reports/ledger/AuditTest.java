package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Kept.class)
class AuditTest {
  @Parameter private Kept kept;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  @TempDir Path folder;
  private Raw raw;

  @BeforeEach
  void fiveEventsOfOneBenchAndTwoOfAnother() {
    raw = new Raw(kept.url(folder));
    String tag = Tags.of(1);
    try (Ledger ledger = kept.open(folder, "bench-1", CLOCK)) {
      ledger.receive(Samples.core(tag, "114"));
      ledger.answers(tag, Samples.answers());
      ledger.runEnded(Samples.run("a", tag));
      ledger.decided(tag, Samples.pending(), "H. Oduya");
      ledger.identified(tag, Samples.identification(), "H. Oduya");
    }
    try (Ledger other = kept.open(folder, "bench-2", CLOCK)) {
      other.runEnded(Samples.run("b", tag));
      other.decided(tag, Samples.pending(), "M. Reyes");
    }
  }

  @Test
  void anUntouchedLedgerIsWholeAndNamesItsHeads() {
    Verification found = verify();
    assertTrue(found.whole(), found.broken().toString());
    assertEquals(7, found.events());
    assertTrue(found.heads().get(0).toString().startsWith("bench-1:5:"), found.heads().toString());
    assertTrue(found.heads().get(1).toString().startsWith("bench-2:2:"), found.heads().toString());
  }

  @Test
  void theDatabaseItselfRefusesToChangeAnEvent() {
    assertThrows(
        Exception.class, () -> raw.execute("UPDATE event SET who = 'X' WHERE sequence = 1"));
    assertThrows(Exception.class, () -> raw.execute("DELETE FROM event WHERE sequence = 1"));
    assertThrows(Exception.class, () -> raw.execute("DELETE FROM content"));
    assertTrue(verify().whole());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "body = replace(body, '43.12', '47.12') | event bench-1:3 (run ended, U-000012): was"
            + " changed",
        "who = 'X'                              | event bench-1:3 (run ended, U-000012): was"
            + " changed",
        "at = '2026-11-26T08:15:30.250001Z'     | event bench-1:3 (run ended, U-000012): was"
            + " changed",
        "tag = 'U-00002Z'                       | event bench-1:3 (run ended, U-00002Z): was"
            + " changed",
        "kind = 'decided'                       | event bench-1:3 (decided, U-000012): was changed"
      })
  void aChangeOfAnyColumnIsFoundAndNamed(String change, String expected) {
    raw.tamper("UPDATE event SET " + change + " WHERE chain = 'bench-1' AND sequence = 3");
    assertEquals(expected, verify().broken().get(0));
  }

  @Test
  void aChangedEventWithAFreshHashBreaksTheOneAfterIt() {
    raw.tamper(
        "UPDATE event SET hash = '"
            + "0".repeat(64)
            + "' WHERE chain = 'bench-1' AND sequence = 3");
    assertTrue(
        verify().broken().contains("event bench-1:4: does not follow from the event before it"),
        verify().broken().toString());
  }

  @Test
  void aMissingEventIsFoundAndNamed() {
    raw.tamper("DELETE FROM event WHERE chain = 'bench-1' AND sequence = 2");
    assertEquals("event bench-1:2 to 2: missing", verify().broken().get(0));
  }

  @Test
  void twoSwappedEventsAreFoundAndNamed() {
    raw.tamper(
        "UPDATE event SET position = 1000 WHERE chain = 'bench-1' AND sequence = 2;"
            + "UPDATE event SET position = 2 WHERE chain = 'bench-1' AND sequence = 3;"
            + "UPDATE event SET position = 3 WHERE chain = 'bench-1' AND sequence = 2");
    Verification found = verify();
    assertFalse(found.whole());
    assertEquals("event bench-1:2 to 2: missing", found.broken().get(0));
    assertTrue(
        found.broken().contains("event bench-1:2: stands after 3, out of order"),
        found.broken().toString());
  }

  @Test
  void aTailThatWasCutOffIsFound() {
    raw.tamper("DELETE FROM event WHERE chain = 'bench-1' AND sequence >= 4");
    assertTrue(verify().broken().get(0).startsWith("the chain was written up to bench-1:5:"));
  }

  @Test
  void aChangedProfileTextIsFound() {
    raw.tamper("UPDATE content SET body = body || ' '");
    assertEquals(3, verify().broken().size());
    assertTrue(verify().broken().get(0).endsWith(": was changed"));
  }

  private Verification verify() {
    try (Ledger ledger = kept.open(folder, "reader", CLOCK)) {
      return ledger.verify();
    }
  }
}
