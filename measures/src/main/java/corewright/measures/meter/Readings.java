package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The readings of one hold while they are being taken. */
final class Readings {
  private final Map<Quantity, Reading> taken = new EnumMap<>(Quantity.class);

  void put(Quantity quantity, Measurement measured) {
    taken.put(quantity, new Reading.Measured(measured, List.of()));
  }

  void put(Quantity quantity, Measurement measured, List<String> flags) {
    taken.put(quantity, new Reading.Measured(measured, flags));
  }

  void put(Quantity quantity, Reading reading) {
    taken.put(quantity, reading);
  }

  void none(String reason, Quantity... quantities) {
    for (Quantity quantity : quantities) {
      taken.put(quantity, Reading.none(reason));
    }
  }

  /** What was measured of it so far; empty where it was not, or not yet. */
  Optional<Measurement> measured(Quantity quantity) {
    Reading reading = taken.get(quantity);
    return reading == null ? Optional.empty() : reading.measurement();
  }

  Map<Quantity, Reading> all() {
    return taken;
  }
}
