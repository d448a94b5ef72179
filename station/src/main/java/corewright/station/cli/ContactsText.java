package corewright.station.cli;

import corewright.fixtures.describe.BenchDescription.Contacts;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.time.LocalDate;
import java.util.Optional;

/** What a bench's file says of when its fixture's contacts were checked. */
final class ContactsText {
  private ContactsText() {}

  /**
   * The text. What an emulated bench showed names no day that a certificate could rest on, and
   * never takes the place of what a real one did.
   *
   * @param before as the file has it
   * @param again when they are due again
   * @return empty: the file stays as it is
   */
  static Optional<String> of(
      Contacts before, Measurement found, LocalDate again, boolean emulated) {
    if (emulated) {
      return Optional.of("EMULATED, " + Figures.withU(found))
          .filter(text -> !before.checked().contains("due "));
    }
    return Optional.of(Figures.withU(found) + ", due " + again);
  }
}
