package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Stage;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A ledger of the oldest schema under the newest program. */
class MigrationTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void anOldLedger() throws Exception {
    file = folder.resolve("ledger.db");
    OldLedger.write(file);
  }

  @Test
  void itIsVerifiedAsItLiesThere() {
    Verification found = Ledger.verify(file, Expectations.NONE);
    assertTrue(found.whole(), found.broken().toString());
    assertEquals(OldLedger.EVENTS, found.events());
    assertEquals(0, found.signed());
  }

  @Test
  void itIsBroughtUpToDateAndTellsWhatItNeverKept() {
    List<Head> heads = Ledger.verify(file, Expectations.NONE).heads();
    try (Ledger ledger = Ledger.open(file, "bench-1", CLOCK, SigningKey.make())) {
      assertEquals(heads, ledger.custody().heads());
      assertEquals(Stage.CLOSED, ledger.lives().standing(Tags.of(1)).life().stage());
      assertEquals(Stage.RECEIVED, ledger.lives().standing(Tags.of(2)).life().stage());
      assertEquals(List.of(Samples.run("a", Tags.of(1))), ledger.dossier(Tags.of(1)).runs());
      assertEquals(Tags.of(3), ledger.nextTag());
      ledger.decided(Tags.of(2), Samples.pending(), "H. Oduya");
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
      assertEquals(1, found.signed());
    }
  }
}
