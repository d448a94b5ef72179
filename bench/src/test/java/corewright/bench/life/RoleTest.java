package corewright.bench.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RoleTest {
  /** Every act, with the first letters of the roles that may take it (common practice). */
  private static final List<String> WHO =
      List.of(
          "RECEIVE CTIO",
          "QUARANTINE CTIO",
          "FREE IO",
          "MAKE_SAFE TIO",
          "LEAVE_CHARGED TIO",
          "IDENTIFY TIO",
          "TEST TIO",
          "HOLD CTIO",
          "DECIDE_REBUILD TIO",
          "DECIDE_REPLACE TIO",
          "DECIDE_RETURN TIO",
          "OPEN TIO",
          "WORK TIO",
          "CLOSE TIO",
          "PROVE TIO",
          "DISPROVE TIO",
          "SEAL IO",
          "PACK CIO",
          "SHIP CIO",
          "STOCK TIO",
          "HARVEST IO",
          "SCRAP IO",
          "STEP_BACK IO");

  @ParameterizedTest
  @EnumSource(Role.class)
  void everyActIsAllowedOrNotToEveryRole(Role role) {
    assertEquals(Act.values().length, WHO.size());
    for (Act act : Act.values()) {
      String line = WHO.get(act.ordinal());
      assertTrue(line.startsWith(act.name() + " "), line);
      String roles = line.substring(act.name().length() + 1);
      assertEquals(roles.indexOf(role.name().charAt(0)) >= 0, role.may(act), role + " " + act);
    }
  }

  @Test
  void onlyTheOwnerMakesAccountsAndRemovesNames() {
    assertEquals(
        List.of(Role.OWNER), Arrays.stream(Role.values()).filter(Role::keepsTheShop).toList());
  }
}
