package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Act;
import corewright.bench.life.Role;
import corewright.reports.Samples;
import corewright.reports.ledger.Accounts.Account;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AccountsTest {
  private static final char[] OWNERS = "seven red boats".toCharArray();
  private static final char[] REYES = "nine blue kettles".toCharArray();
  @TempDir private Path folder;

  /** RFC 7914, 11, first vector; also what Python's hashlib.pbkdf2_hmac gives. */
  @Test
  void theHashIsThePublishedOne() {
    byte[] derived = Passwords.derive("passwd".toCharArray(), "salt".getBytes(US_ASCII), 1, 512);
    assertEquals(
        "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783",
        HexFormat.of().formatHex(derived));
  }

  @Test
  void fromTheFirstAccountOnEverybodyActsWithinARole() throws Exception {
    Path file = folder.resolve("ledger.db");
    Clock clock = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
    try (Ledger ledger = Ledger.open(file, "bench-1", clock, SigningKey.make())) {
      String tag = ledger.nextTag();
      ledger.receive(Samples.core(tag, "114"));
      Accounts accounts = ledger.accounts();
      accounts.signIn("anybody", new char[0]);
      refused(() -> accounts.put("M. Reyes", Role.TECHNICIAN, REYES, "M. Reyes"), "is the owner's");
      refused(() -> accounts.put("H. Oduya", Role.OWNER, new char[7], "x"), "8 characters");
      accounts.put("H. Oduya", Role.OWNER, OWNERS, "H. Oduya");
      accounts.put("M. Reyes", Role.TECHNICIAN, REYES, "H. Oduya");
      assertEquals(
          List.of(
              new Account("H. Oduya", Role.OWNER, Double.POSITIVE_INFINITY),
              new Account("M. Reyes", Role.TECHNICIAN, 60)), // EN 50191: 60 V DC
          accounts.all());
      refused(() -> accounts.grant("M. Reyes", 120, "M. Reyes"), "may not say what somebody");
      refused(() -> accounts.grant("nobody", 120, "H. Oduya"), "no account");
      refused(() -> accounts.grant("M. Reyes", 0, "H. Oduya"), "up to 0.0 V");
      accounts.grant("M. Reyes", 120, "H. Oduya");
      accounts.put("M. Reyes", Role.TECHNICIAN, REYES, "H. Oduya"); // a new password takes nothing
      assertEquals(120, accounts.find("m. reyes").orElseThrow().upTo_V());
      refused(
          () -> accounts.put("M. Reyes", Role.OWNER, REYES, "M. Reyes"), "may not make accounts");

      accounts.signIn("M. Reyes", REYES);
      refused(() -> accounts.signIn("M. Reyes", OWNERS), "do not fit");
      refused(() -> accounts.signIn("nobody", OWNERS), "do not fit");

      Lives lives = ledger.lives();
      refused(() -> lives.take(tag, new Step.Plain(Act.QUARANTINE, ""), "stranger"), "no account");
      lives.take(tag, new Step.Plain(Act.QUARANTINE, ""), "M. Reyes");
      refused(
          () -> lives.take(tag, new Step.Scrapping("wet", "H. Oduya", ""), "M. Reyes"),
          "M. Reyes is technician and may not do this");
      refused(
          () -> ledger.custody().forget("Orrel Plant Hire", "asked", "M. Reyes"),
          "may not remove names");
      lives.take(tag, new Step.Scrapping("wet", "M. Reyes", ""), "H. Oduya");
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
      assertEquals("H. Oduya", lives.history(tag).get(2).who());
    }
    String bytes = new String(Files.readAllBytes(file), ISO_8859_1);
    assertFalse(bytes.contains("red boats") || bytes.contains("blue kettles"));
  }

  @Test
  void theSamePasswordHasAnotherHashEachTime() {
    String one = Passwords.salt();
    String other = Passwords.salt();
    assertNotEquals(one, other);
    assertNotEquals(Passwords.hash(REYES, one, 10), Passwords.hash(REYES, other, 10));
  }

  /** OWASP's Password Storage Cheat Sheet asks for 600,000 with SHA-256 (from memory). */
  @Test
  void aGuessAtAShopsPasswordCostsMoreThanOneOfTheTests() throws Exception {
    String ofTests = System.clearProperty(Passwords.OF_TESTS);
    Path file = folder.resolve("ledger.db");
    Clock clock = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
    try (Ledger ledger = Ledger.open(file, "bench-1", clock, SigningKey.make())) {
      ledger.accounts().put("H. Oduya", Role.OWNER, OWNERS, "H. Oduya");
    } finally {
      if (ofTests != null) {
        System.setProperty(Passwords.OF_TESTS, ofTests);
      }
    }
    try (Database database = Database.open(Urls.of(file))) {
      int kept =
          database.read(h -> h.select("SELECT iterations FROM account").mapTo(Integer.class).one());
      assertTrue(kept >= 600_000, kept + " iterations");
    }
  }

  private static void refused(Runnable step, String why) {
    LedgerFault fault = assertThrows(LedgerFault.class, step::run);
    assertTrue(fault.getMessage().contains(why), fault.getMessage());
  }
}
