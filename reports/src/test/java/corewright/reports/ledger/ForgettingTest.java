package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Dossier;
import corewright.reports.Samples;
import corewright.reports.ledger.Agreements.Quote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person's name is removed; what happened to their units is not. */
class ForgettingTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
  @TempDir private Path folder;

  @Test
  void noByteOfTheNameIsLeftAndNothingElseIsMissing() throws Exception {
    Path file = folder.resolve("ledger.db");
    Clock clock = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
    try (Ledger ledger = Ledger.open(file, "bench-1", clock, SigningKey.make())) {
      String tag = ledger.nextTag();
      Money money = Money.of("1", "EUR");
      Quote quote =
          new Quote(
              "Orrel Plant Hire", "repair", "sd48", money, money, new Money(0, "EUR"), TODAY, "");
      String number = ledger.agreements().quote(quote, "counter").number();
      ledger.agreements().answer(number, true, "Wilhelmina Orrel", "mail", TODAY, "counter");
      ledger.receive(Samples.core(tag, "114"));
      ledger.runEnded(Samples.run("a", tag));
      ledger
          .papers()
          .add(
              tag,
              "test report",
              Path.of("documents/x.pdf"),
              "ef".repeat(32),
              java.util.Map.of(),
              "H. Oduya");
      Dossier before = ledger.dossier(tag);
      assertTrue(bytes().contains("Orrel Plant Hire") && bytes().contains("Wilhelmina"));

      assertEquals(
          List.of("documents/x.pdf"),
          ledger.custody().forget("Orrel Plant Hire", "asked", "owner"));
      ledger.custody().forget("Wilhelmina Orrel", "asked", "owner");

      assertFalse(bytes().contains("Orrel"), "left in the file, its log or its free pages");
      assertFalse(bytes().contains("Wilhelmina"));
      assertTrue(ledger.verify().whole(), ledger.verify().broken().toString());
      Dossier after = ledger.dossier(tag);
      assertEquals("(removed) K-00001", after.core().customer());
      assertEquals(before.runs(), after.runs());
      assertEquals("(removed) K-00002, mail", ledger.agreements().get(number).answered());
      ledger.custody().rebuildViews();
      assertFalse(bytes().contains("Orrel"));
      assertThrows(
          LedgerFault.class, () -> ledger.custody().forget("Orrel Plant Hire", "again", "owner"));
    }
  }

  @Test
  void whoIsOwedADepositIsNotForgotten() {
    Clock clock = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
    try (Ledger ledger = Ledger.open(folder.resolve("ledger.db"), "bench-1", clock)) {
      ledger.deposits().take("Orrel", Money.of("150", "EUR"), 30, "", TODAY, "counter");
      LedgerFault fault =
          assertThrows(LedgerFault.class, () -> ledger.custody().forget("Orrel", "asked", "owner"));
      assertTrue(fault.getMessage().contains("is still owed"), fault.getMessage());
    }
  }

  private String bytes() throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        all.append(new String(Files.readAllBytes(file), ISO_8859_1));
      }
    }
    return all.toString();
  }
}
