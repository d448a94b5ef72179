package corewright.bench.record;

import corewright.measures.Measurement;

/**
 * A reading that no instrument of the bench took: a person read it elsewhere.
 *
 * @param value with the uncertainty that the person gives it
 * @param by whose reading it is
 * @param instrument what it was read with, as {@code multimeter 4, due 2027-03}
 */
public record HandReading(Measurement value, String by, String instrument) {

  public HandReading {
    if (by.isBlank() || instrument.isBlank()) {
      throw new IllegalArgumentException(
          "a reading by hand has no name or no instrument. Say who read it, and with what.");
    }
  }

  /** One sentence for the record. */
  public String sentence() {
    return "Entered by hand by " + by + ", read with " + instrument + ".";
  }
}
