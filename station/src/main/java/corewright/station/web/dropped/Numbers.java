package corewright.station.web.dropped;

import corewright.station.work.Refused;
import java.util.Optional;

/** A number as a person types it, with either decimal mark. */
final class Numbers {
  private Numbers() {}

  static Optional<Double> of(String given, String what) {
    if (given.isBlank()) {
      return Optional.empty();
    }
    try {
      double value = Double.parseDouble(given.strip().replace(',', '.'));
      if (Double.isFinite(value)) {
        return Optional.of(value);
      }
    } catch (NumberFormatException none) {
      // told below
    }
    throw new Refused("'" + given + "' for " + what + " is no number", "Type digits, as 12.5.");
  }
}
