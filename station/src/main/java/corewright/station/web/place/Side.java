package corewright.station.web.place;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What of a core is photographed at the counter, in the order in which it is turned. */
public enum Side {
  BOX,
  LABEL,
  TOP,
  UNDERSIDE,
  FASTENERS,
  CONNECTOR,
  PINS,
  LEFT,
  RIGHT;

  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The side of these words. */
  static Optional<Side> of(String words) {
    return Arrays.stream(values()).filter(s -> s.words().equals(words)).findFirst();
  }
}
