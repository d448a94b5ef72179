package corewright.station.work.books;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What a spreadsheet seems to be. It is shown, and counts for nothing until somebody agrees. */
final class Guess {
  private static final List<String> DATES =
      List.of(
          "dd.MM.yyyy",
          "dd/MM/yyyy",
          "MM/dd/yyyy",
          "yyyy-MM-dd",
          "dd-MM-yyyy",
          "dd.MM.yy",
          "dd/MM/yy",
          "MM/dd/yy");

  private Guess() {}

  static Mapping of(String text, List<String> families) {
    char separator = SheetText.separator(text);
    List<SheetText.Line> lines = SheetText.lines(text, separator);
    if (lines.isEmpty()) {
      return new Mapping(separator, ',', "", Map.of(), Map.of());
    }
    List<String> header = lines.get(0).cells();
    List<SheetText.Line> rows = lines.subList(1, lines.size());
    Map<Field, String> columns = columns(header);
    return new Mapping(
        separator,
        decimal(header, rows, columns),
        dates(header, rows, columns),
        columns,
        families(cells(header, rows, columns, EnumSet.of(Field.FAMILY)), families));
  }

  /** Each field takes the header that is most like it, each header is taken once. */
  private static Map<Field, String> columns(List<String> header) {
    Map<Field, String> columns = new EnumMap<>(Field.class);
    Set<String> taken = new HashSet<>();
    for (int likeness = 3; likeness > 0; likeness--) {
      for (Field field : Field.values()) {
        for (String name : header) {
          if (!columns.containsKey(field)
              && !taken.contains(name)
              && field.likeness(name) == likeness) {
            columns.put(field, name);
            taken.add(name);
          }
        }
      }
    }
    return columns;
  }

  /** The one way of writing dates that all of them fit; none where two fit, or none does. */
  private static String dates(
      List<String> header, List<SheetText.Line> rows, Map<Field, String> columns) {
    Set<String> cells = cells(header, rows, columns, EnumSet.of(Field.RECEIVED, Field.SHIPPED));
    long most = 0;
    String best = "";
    boolean alone = false;
    for (String format : DATES) {
      long fitting = cells.stream().filter(c -> DateCell.read(c, format).isPresent()).count();
      if (fitting > most) {
        most = fitting;
        best = format;
        alone = true;
      } else if (fitting == most && fitting > 0) {
        alone = false;
      }
    }
    return alone && most * 2 > cells.size() ? best : "";
  }

  private static char decimal(
      List<String> header, List<SheetText.Line> rows, Map<Field, String> columns) {
    Set<String> cells = cells(header, rows, columns, EnumSet.of(Field.OUTPUT, Field.PRICE));
    long commas = cells.stream().filter(c -> c.matches(".*,\\d{1,2}(\\D*)")).count();
    long points = cells.stream().filter(c -> c.matches(".*\\.\\d{1,2}(\\D*)")).count();
    return commas > points ? ',' : '.';
  }

  /** A name of the sheet is the family whose id is in it, or which it is in. */
  private static Map<String, String> families(Set<String> named, List<String> families) {
    Map<String, String> known = new TreeMap<>();
    for (String name : named) {
      String plain = plain(name);
      families.stream()
          .filter(id -> plain.contains(plain(id)))
          .findFirst()
          .ifPresent(id -> known.put(name, id));
    }
    return known;
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }

  private static Set<String> cells(
      List<String> header,
      List<SheetText.Line> rows,
      Map<Field, String> columns,
      Set<Field> fields) {
    Set<String> cells = new HashSet<>();
    for (Field field : fields) {
      int at = header.indexOf(columns.getOrDefault(field, ""));
      if (at >= 0) {
        rows.stream()
            .filter(r -> r.cells().size() > at)
            .map(r -> r.cells().get(at))
            .filter(c -> !c.isEmpty())
            .forEach(cells::add);
      }
    }
    return cells;
  }
}
