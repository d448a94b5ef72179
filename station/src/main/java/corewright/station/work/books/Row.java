package corewright.station.work.books;

import corewright.bench.record.Core;
import corewright.reports.ledger.Books;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One row of an old spreadsheet as a mapping reads it: a unit, or what is wrong and what to do. */
public sealed interface Row {
  /** A row that can be brought. */
  record Read(Books.Entry entry) implements Row {}

  /** A row that cannot. */
  record Bad(Refusal refusal) implements Row {}

  /**
   * Why a row cannot be brought.
   *
   * @param line counted from 1
   */
  record Refusal(int line, String what, String remedy) {}

  /** What is kept beside the unit as it was written; numbers in plain digits. */
  Set<Field> NUMBERS = Set.of(Field.OUTPUT, Field.PRICE);

  Set<Field> KEPT = Set.of(Field.NUMBER, Field.RESULT, Field.NOTE);

  /**
   * Reads a row.
   *
   * @param families ids of those that there are
   */
  static Row of(
      SheetText.Line line,
      List<String> header,
      Mapping mapping,
      Set<String> families,
      String file) {
    if (line.cells().size() > header.size()) {
      return bad(
          line,
          "it has " + line.cells().size() + " cells under " + header.size() + " headers",
          "A cell holds the separator: put that cell into quotes");
    }
    Map<Field, String> cells = new LinkedHashMap<>();
    mapping
        .columns()
        .forEach(
            (field, column) -> {
              int at = header.indexOf(column);
              if (at >= 0 && at < line.cells().size() && !line.cells().get(at).isEmpty()) {
                cells.put(field, line.cells().get(at));
              }
            });
    return new Reader(line, mapping, families, file, cells).read();
  }

  private static Row bad(SheetText.Line line, String what, String remedy) {
    return new Bad(new Refusal(line.line(), what, remedy));
  }

  /** The cells of one row, one check after the other. */
  record Reader(
      SheetText.Line line,
      Mapping mapping,
      Set<String> families,
      String file,
      Map<Field, String> cells) {

    Row read() {
      String serial = cell(Field.SERIAL);
      if (serial.isEmpty() && cell(Field.NUMBER).isEmpty()) {
        return bad(line, "it has neither a serial nor a number", "Nobody could find it again");
      }
      String family = mapping.families().getOrDefault(cell(Field.FAMILY), "");
      if (!families.contains(family)) {
        return bad(
            line,
            cell(Field.FAMILY).isEmpty()
                ? "it says no family"
                : "no family is known for '" + cell(Field.FAMILY) + "'",
            "Name one for it under \"families\" of the mapping: " + String.join(", ", families));
      }
      if (mapping.dates().isEmpty()) {
        return bad(
            line,
            "'" + cell(Field.RECEIVED) + "' can be more than one day, or none",
            "Say under \"dates\" of the mapping how dates are written");
      }
      Optional<LocalDate> received = date(Field.RECEIVED);
      Optional<LocalDate> shipped = date(Field.SHIPPED);
      if (received.isEmpty()) {
        return noDate(Field.RECEIVED);
      }
      if (shipped.isEmpty() && !cell(Field.SHIPPED).isEmpty()) {
        return noDate(Field.SHIPPED);
      }
      if (shipped.filter(received.get()::isAfter).isPresent()) {
        return bad(line, "it left before it came", "Look which of the two days is wrong");
      }
      Map<String, String> kept = new LinkedHashMap<>();
      KEPT.forEach(field -> put(kept, field, cell(field)));
      for (Field field : NUMBERS) {
        Optional<BigDecimal> number = NumberText.read(cell(field), mapping.decimal());
        if (number.isEmpty() && !cell(field).isEmpty()) {
          return bad(
              line,
              "'" + cell(field) + "' is no number with the decimal mark " + mapping.decimal(),
              "Mend the cell, or the decimal mark of the mapping");
        }
        number.ifPresent(n -> put(kept, field, n.toPlainString()));
      }
      return new Read(
          new Books.Entry(
              key(serial, received.get()),
              file,
              line.line(),
              new Core(
                  "",
                  family,
                  serial,
                  cell(Field.LABEL),
                  cell(Field.CUSTOMER),
                  "repair",
                  cell(Field.COMPLAINT),
                  received.get().atStartOfDay().toInstant(ZoneOffset.UTC),
                  "old books, line " + line.line()),
              shipped.map(LocalDate::toString).orElse(""),
              kept));
    }

    /** The old number names a row; where there is none, the serial and the day do. */
    private String key(String serial, LocalDate received) {
      String number = cell(Field.NUMBER);
      return number.isEmpty()
          ? "serial " + serial.toUpperCase(Locale.ROOT) + " of " + received
          : "number " + number.toUpperCase(Locale.ROOT);
    }

    private Row noDate(Field field) {
      return bad(
          line,
          "'"
              + cell(field)
              + "' under '"
              + mapping.columns().getOrDefault(field, field.id())
              + "' is no day as "
              + mapping.dates(),
          "Mend the cell, or \"dates\" of the mapping");
    }

    private Optional<LocalDate> date(Field field) {
      return DateCell.read(cell(field), mapping.dates());
    }

    private String cell(Field field) {
      return cells.getOrDefault(field, "");
    }

    private static void put(Map<String, String> kept, Field field, String value) {
      if (!value.isEmpty()) {
        kept.put(field.id(), value);
      }
    }
  }
}
