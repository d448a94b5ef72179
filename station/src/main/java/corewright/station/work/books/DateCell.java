package corewright.station.work.books;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/** A date as a spreadsheet shows it; a time behind it does not count. */
final class DateCell {
  private DateCell() {}

  /** The date; empty where the cell is none in this way of writing, as the 31st of February. */
  static Optional<LocalDate> read(String cell, String format) {
    String date = cell.strip().split("[ T]", 2)[0];
    try {
      return Optional.of(
          LocalDate.parse(
              date,
              DateTimeFormatter.ofPattern(
                      format.replace("dd", "d").replace("MM", "M").replace('y', 'u'), Locale.ROOT)
                  .withResolverStyle(ResolverStyle.STRICT)));
    } catch (DateTimeParseException | IllegalArgumentException none) {
      return Optional.empty();
    }
  }
}
