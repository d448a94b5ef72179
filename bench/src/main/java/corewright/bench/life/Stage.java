package corewright.bench.life;

import java.util.Locale;

/** Where a unit stands in the shop. A visit begins with {@link #RECEIVED}. */
public enum Stage {
  /** Not here yet: announced at most. */
  EXPECTED,
  RECEIVED,
  /** On the red shelf: nothing is powered, nothing is opened. */
  QUARANTINE,
  IDENTIFIED,
  /** Tested as received, or as returned. */
  TESTED,
  /** A question is open; it has an owner and a due date. */
  PENDING,
  TO_REBUILD,
  TO_REPLACE,
  TO_RETURN,
  /** Its cover is off. No final test and no seal is worth anything from here on. */
  OPEN,
  /** Closed again, and not tested since. */
  CLOSED,
  /** Passed its final test since it was last open. */
  PROVEN,
  SEALED,
  PACKED,
  SHIPPED,
  IN_STOCK,
  HARVESTED,
  SCRAPPED;

  /** As people read it: {@code to rebuild}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether the unit is in the shop's hands. */
  public boolean inTheShop() {
    return switch (this) {
      case EXPECTED, SHIPPED, HARVESTED, SCRAPPED -> false;
      default -> true;
    };
  }
}
