package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a file into a database that benches share, and back into a file. */
class MovingTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final SigningKey KEY = SigningKey.make();
  @TempDir private Path folder;
  private Path file;
  private String shared = "";

  @BeforeEach
  void oneUnitInAFile() {
    file = folder.resolve("ledger.db");
    shared = Kept.POSTGRESQL.url(folder);
    Kept.POSTGRESQL.make(shared);
    try (Ledger ledger = Ledger.open(file, "bench-1", CLOCK, KEY)) {
      String tag = ledger.nextTag();
      ledger.receive(Samples.core(tag, "114 Ω \\ '"));
      ledger.runEnded(Samples.run("a", tag));
      ledger.decided(tag, Samples.pending(), "x");
    }
  }

  @Test
  void everythingMovesAndTheOldFileTakesNothingMore() {
    try (Ledger ledger = Ledger.open(file, "bench-1", CLOCK, KEY);
        Ledger bystander = Ledger.open(file, "bench-2", CLOCK, KEY)) {
      Verification moved = ledger.custody().moveTo(shared, "H. Oduya");
      assertTrue(moved.whole(), moved.broken().toString());
      assertEquals(4, moved.signed());
      assertEquals(moved.heads(), ledger.custody().heads());
      LedgerFault refused =
          assertThrows(
              LedgerFault.class, () -> bystander.decided(Tags.of(1), Samples.pending(), "x"));
      assertTrue(refused.getMessage().contains("has moved to jdbc:postgresql:"), "" + refused);
      assertTrue(refused.getMessage().contains("Open the ledger there"), "" + refused);
      assertThrows(LedgerFault.class, () -> ledger.custody().moveTo(shared, "H. Oduya"));
    }
    try (Ledger ledger = Ledger.open(shared, "bench-1", CLOCK, Optional.of(KEY))) {
      assertEquals(new Raw(file).views(), new Raw(shared).views());
      assertEquals(List.of(Samples.run("a", Tags.of(1))), ledger.dossier(Tags.of(1)).runs());
      assertEquals(Tags.of(2), ledger.nextTag());
      ledger.receive(Samples.core(Tags.of(2), "115"));
      assertTrue(ledger.verify().whole());
      assertEquals(5, ledger.verify().signed());
      LedgerFault there =
          assertThrows(LedgerFault.class, () -> ledger.custody().moveTo(shared, "H. Oduya"));
      assertTrue(there.getMessage().contains("is shared already"), there.getMessage());
    }
  }

  @Test
  void aCopyOfASharedLedgerIsAFileThatGoesOn() {
    try (Ledger ledger = Ledger.open(file, "bench-1", CLOCK, KEY)) {
      ledger.custody().moveTo(shared, "H. Oduya");
    }
    Path copy = folder.resolve("copy.db");
    try (Ledger ledger = Ledger.open(shared, "bench-1", CLOCK, Optional.of(KEY))) {
      ledger.custody().copyTo(copy);
      assertEquals(Ledger.verify(copy, Expectations.NONE), ledger.verify());
    }
    assertEquals(new Raw(shared).views(), new Raw(copy).views());
    try (Ledger again = Ledger.open(copy, "bench-1", CLOCK, KEY)) {
      again.decided(Tags.of(1), Samples.pending(), "x");
      assertEquals(5, again.verify().signed());
    }
  }

  @Test
  void aNameThatWasRemovedIsInNoRowOfTheSharedLedger() {
    try (Ledger ledger = Ledger.open(file, "bench-1", CLOCK, KEY)) {
      ledger.custody().moveTo(shared, "H. Oduya");
    }
    try (Ledger ledger = Ledger.open(shared, "bench-1", CLOCK, Optional.of(KEY))) {
      ledger.custody().forget("Orrel Plant Hire", "asked", "owner");
      assertEquals("(removed) K-00001", ledger.dossier(Tags.of(1)).core().customer());
      assertTrue(ledger.verify().whole());
    }
  }

  @Test
  void aLedgerOfANewerProgramIsRefusedByName() {
    new Raw(file)
        .execute(
            "UPDATE flyway_schema_history SET version = '"
                + (Migrations.NEWEST + 1)
                + "' WHERE version = '"
                + Migrations.NEWEST
                + "'");
    LedgerFault fault =
        assertThrows(LedgerFault.class, () -> Ledger.open(file, "bench-1", CLOCK, KEY));
    assertTrue(fault.getMessage().contains("Use the program that wrote it"), "" + fault);
  }

  @Test
  void aServerThatIsNotThereIsNamedWithoutWhoWasAsking() {
    LedgerFault fault =
        assertThrows(
            LedgerFault.class,
            () ->
                Ledger.open(
                    "jdbc:postgresql://127.0.0.1:1/none?user=shop",
                    "bench-1",
                    CLOCK,
                    Optional.empty()));
    assertTrue(
        fault.getMessage().contains("open the ledger jdbc:postgresql://127.0.0.1:1/none:"),
        fault.getMessage());
    assertTrue(fault.getMessage().contains("See that the database runs"), fault.getMessage());
  }

  /** A letter with an umlaut is in LATIN1; an ohm is not. */
  @Test
  void aDatabaseThatLacksLettersIsRefusedBeforeAnythingIsMadeThere() {
    Jdbi.create(Kept.Server.url("postgres"))
        .useHandle(
            handle ->
                handle.execute(
                    "CREATE DATABASE latin ENCODING 'LATIN1' TEMPLATE template0 LC_COLLATE 'C'"
                        + " LC_CTYPE 'C'"));
    LedgerFault fault =
        assertThrows(
            LedgerFault.class,
            () -> Ledger.open(Kept.Server.url("latin"), "bench-1", CLOCK, Optional.empty()));
    assertTrue(fault.getMessage().contains("keeps texts as LATIN1"), fault.getMessage());
    assertTrue(fault.getMessage().contains("with encoding UTF8"), fault.getMessage());
    int tables =
        Jdbi.create(Kept.Server.url("latin"))
            .withHandle(
                handle ->
                    handle
                        .select("SELECT count(*) FROM pg_tables WHERE schemaname = 'public'")
                        .mapTo(Integer.class)
                        .one());
    assertEquals(0, tables);
  }
}
