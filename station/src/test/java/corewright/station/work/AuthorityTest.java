package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.ledger.Accounts;
import corewright.reports.ledger.LedgerFault;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** 48 V may be energised by whoever tests, 110 V by whom the owner said so, and not alone. */
class AuthorityTest {
  private static final Family SD48 = Catalogue.ofHome().family("sd48");
  private static final Family IE110 = Catalogue.ofHome().family("ie110");
  private static final String OWNER = "H. Oduya";
  private static final String OPERATOR = "M. Reyes";

  @TempDir private Path folder;

  @Test
  void aClassOfVoltageIsTheOwnersToGiveAndTheSecondPersonHasAnAccount() {
    Later clock = new Later();
    try (Workshop shop =
        Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "bench-1", clock)) {
      Accounts accounts = shop.ledger().accounts();
      Authority authority = new Authority(accounts);
      assertEquals(List.of(), authority.operatorAgainst("anybody", IE110), "no accounts yet");
      assertEquals(List.of(), second(authority, "anybody"));

      char[] password = "seven red boats".toCharArray();
      accounts.put(OWNER, Role.OWNER, password, OWNER);
      accounts.put(OPERATOR, Role.TECHNICIAN, password, OWNER);
      assertEquals(List.of(), authority.operatorAgainst(OPERATOR, SD48));
      assertEquals(
          List.of("M. Reyes may energise units up to 60 V; ie110 makes 110 V."),
          authority.operatorAgainst(OPERATOR, IE110));
      assertEquals(List.of(), authority.operatorAgainst(OWNER, IE110));
      accounts.grant(OPERATOR, 110, OWNER);
      assertEquals(List.of(), authority.operatorAgainst(OPERATOR, IE110));

      assertTrue(second(authority, "Somebody").get(0).contains("no account"));
      assertTrue(second(authority, " m. reyes ").get(0).contains("is the operator"));
      assertTrue(second(authority, OWNER).get(0).contains("has not confirmed with the password"));
      assertEquals(
          List.of(),
          authority.secondAgainst(OPERATOR, SecondPerson.named("Somebody"), SD48),
          "60 V");
      whoStandsByIsProved(shop, authority, clock);
    }
  }

  /**
   * A wrong password is refused and written down; five in a quarter of an hour, and none counts.
   */
  private static void whoStandsByIsProved(Workshop shop, Authority authority, Later clock) {
    Proving proving = shop.proving();
    Accounts accounts = shop.ledger().accounts();
    char[] right = "seven red boats".toCharArray();
    char[] wrong = "seven red goats".toCharArray();
    assertThrows(LedgerFault.class, () -> proving.second("h. oduya", wrong, "U-1 on bench-1"));
    assertEquals(1, accounts.wrongSince(OWNER, Instant.EPOCH));
    for (int i = 0; i < 4; i++) {
      accounts.atTheDoor(Accounts.WRONG_PASSWORD, OWNER, "another program");
    }
    Refused waits = assertThrows(Refused.class, () -> proving.second(OWNER, right, "U-1"));
    assertEquals("Too many wrong passwords for " + OWNER, waits.getMessage());
    clock.shift = Duration.ofMinutes(16);
    SecondPerson by = proving.second(" h. oduya ", right, "U-1 on bench-1");
    assertEquals(SecondPerson.proved(OWNER), by);
    assertEquals(List.of(), authority.secondAgainst(OPERATOR, Optional.of(by), IE110));
    assertTrue(shop.ledger().verify().whole());
  }

  private static List<String> second(Authority authority, String name) {
    return authority.secondAgainst(OPERATOR, SecondPerson.named(name), IE110);
  }

  /** The computer's time and some more. */
  private static final class Later implements Clock {
    private final Clock own = Clock.system();
    Duration shift = Duration.ZERO;

    @Override
    public long nanos() {
      return own.nanos();
    }

    @Override
    public Instant wall() {
      return own.wall().plus(shift);
    }

    @Override
    public void pause(Duration time) {
      own.pause(time);
    }
  }
}
