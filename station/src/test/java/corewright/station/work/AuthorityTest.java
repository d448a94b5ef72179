package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.ledger.Accounts;
import java.nio.file.Path;
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
    try (Workshop shop =
        Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "bench-1", Clock.system())) {
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
      assertEquals(List.of(), second(authority, OWNER));
      assertEquals(
          List.of(), authority.secondAgainst(OPERATOR, Optional.of("Somebody"), SD48), "60 V");
    }
  }

  private static List<String> second(Authority authority, String name) {
    return authority.secondAgainst(OPERATOR, Optional.of(name), IE110);
  }
}
