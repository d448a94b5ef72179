package corewright.station.web;

import java.time.ZoneId;

/** Where the shop's clock hangs: the one place of the console that asks for the time zone. */
public final class HouseClock {
  private HouseClock() {}

  /** This computer's own. */
  public static ZoneId zone() {
    return ZoneId.systemDefault();
  }
}
