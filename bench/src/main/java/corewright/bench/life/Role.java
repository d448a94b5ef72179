package corewright.bench.life;

import java.util.EnumSet;
import java.util.Set;

/** Who may take which step. Common practice, no source: sealing and scrapping take an inspector. */
public enum Role {
  /** Receives, asks, packs, hands out. */
  COUNTER,
  /** Discharges, identifies, tests, rebuilds. */
  TECHNICIAN,
  /** Also seals, lets go, takes back, takes apart. */
  INSPECTOR,
  /** Also removes names and makes accounts. */
  OWNER;

  private static final Set<Act> AT_THE_COUNTER =
      EnumSet.of(Act.RECEIVE, Act.QUARANTINE, Act.HOLD, Act.PACK, Act.SHIP);
  private static final Set<Act> NOT_AT_THE_BENCH =
      EnumSet.of(Act.FREE, Act.SEAL, Act.PACK, Act.SHIP, Act.HARVEST, Act.SCRAP, Act.STEP_BACK);

  public boolean may(Act act) {
    return switch (this) {
      case COUNTER -> AT_THE_COUNTER.contains(act);
      case TECHNICIAN -> !NOT_AT_THE_BENCH.contains(act);
      case INSPECTOR, OWNER -> true;
    };
  }

  /** Whether the role answers for limits with its name. */
  public boolean signsLimits() {
    return this == INSPECTOR || this == OWNER;
  }

  /** Whether the role makes accounts and removes names. */
  public boolean keepsTheShop() {
    return this == OWNER;
  }
}
