package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Goes through a log once: how it is cut, which headers it has, a thinned sample of each. */
final class Survey {
  private static final int HEAD_LINES = 3000;

  private final LogText text;
  private final Choices choices;

  Survey(LogText text, Choices choices) {
    this.text = text;
    this.choices = choices;
  }

  /** One sample for each different header, in the order of the file. */
  List<SheetSample> sheets() {
    List<String> head = text.lines(Survey::head);
    NotALog.refuse(text.name(), head);
    Dialect dialect = new DialectVote(text.name(), head, choices).winner();
    Head found = Head.find(head, dialect);
    SheetSample first = sheet(found, dialect, head, found.firstData() - 1);
    Map<String, SheetSample> sheets = new LinkedHashMap<>();
    sheets.put(first.key(), first);
    text.lines(lines -> collect(lines, first, sheets));
    List<SheetSample> filled = sheets.values().stream().filter(s -> !s.rows().isEmpty()).toList();
    if (filled.isEmpty()) {
      throw Unreadable.at(
          text.name(),
          found.firstData(),
          1,
          "no row of data under the header can be cut into its columns",
          "Export the recording with semicolons between the columns");
    }
    return filled;
  }

  private static List<String> head(Iterator<String> lines) {
    List<String> head = new ArrayList<>();
    while (lines.hasNext() && head.size() < HEAD_LINES) {
      head.add(Tidy.line(lines.next()));
    }
    return head;
  }

  /** A header with the way its rows are cut: fewer names than pieces means comma pairs. */
  private SheetSample sheet(Head head, Dialect dialect, List<String> lines, int firstData) {
    if (!head.named() || dialect.delimiter() != ',' || head.names().size() >= dialect.columns()) {
      return new SheetSample(head, dialect);
    }
    Cells cells = new Cells();
    List<List<String>> rows = new ArrayList<>();
    for (String line : lines.subList(firstData, lines.size())) {
      cells.split(line, ',');
      if (cells.count() == dialect.columns() && DataRow.is(cells) && rows.size() < 400) {
        rows.add(cells.texts());
      }
    }
    CommaPairs.Found found = CommaPairs.find(head.names(), rows);
    if (found instanceof CommaPairs.Found.Pairs pairs) {
      return new SheetSample(head, dialect.with(pairs.pairs()));
    }
    if (found instanceof CommaPairs.Found.Ambiguous) {
      throw Unreadable.at(
          text.name(),
          head.firstData(),
          1,
          "the comma is both decimal mark and delimiter, and the "
              + dialect.columns()
              + " pieces fit the "
              + head.names().size()
              + " names in more than one way",
          "Export it with semicolons or tabs between the columns, or with a decimal point");
    }
    return new SheetSample(head, dialect);
  }

  private Boolean collect(
      Iterator<String> lines, SheetSample first, Map<String, SheetSample> sheets) {
    Cells cells = new Cells();
    SheetSample sheet = first;
    int number = 0;
    while (lines.hasNext()) {
      String line = lines.next();
      number++;
      if (number < first.head().firstData() || line.isEmpty()) {
        continue;
      }
      Optional<SheetSample> next =
          Headers.mayBeOne(line) ? header(line, number, sheet, sheets) : Optional.empty();
      if (next.isPresent()) {
        sheet = next.get();
      } else if (sheet.wants()
          && sheet.dialect().cut(Tidy.line(line), cells)
          && DataRow.is(cells)) {
        sheet.keep(cells.texts());
      }
    }
    return true;
  }

  private Optional<SheetSample> header(
      String line, int number, SheetSample current, Map<String, SheetSample> sheets) {
    Optional<List<String>> names = Headers.names(Tidy.line(line), current.dialect());
    return names.map(
        n ->
            sheets.computeIfAbsent(
                SheetSample.key(n),
                k ->
                    new SheetSample(
                        new Head(n, List.of(), number, number + 1), plain(current, n))));
  }

  /** Pairs belong to one header; under another one only rows that need none are read. */
  private static Dialect plain(SheetSample current, List<String> names) {
    Dialect d = current.dialect();
    return new Dialect(d.delimiter(), d.decimal(), names.size(), Optional.empty());
  }
}
