package corewright.bench.log.table;

import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

/** Rows of one sheet with the stamps of one time column, in the order of the lines. */
final class LineRows implements Iterator<Row> {
  private final Iterator<String> lines;
  private final SheetSample sheet;
  private final List<String> keys;
  private final TimeColumn time;
  private final List<Channel> channels;
  private final Dropped dropped;
  private final Cells cells = new Cells();
  private String current;
  private long number;
  private long counted;
  private int segment;
  private Optional<Row> next;

  /**
   * Prepares the reading.
   *
   * @param keys of all headers of the file, so that rows under another one are left out
   * @param channels all kept ones; values of those that the time does not belong to stay NaN
   */
  LineRows(
      Iterator<String> lines,
      SheetSample sheet,
      List<String> keys,
      TimeColumn time,
      List<Channel> channels,
      Dropped dropped) {
    this.lines = lines;
    this.sheet = sheet;
    this.keys = keys;
    this.time = time;
    this.channels = channels;
    this.dropped = dropped;
    this.current = keys.get(0);
    this.next = advance();
  }

  @Override
  public boolean hasNext() {
    return next.isPresent();
  }

  @Override
  public Row next() {
    Row row = next.orElseThrow(NoSuchElementException::new);
    next = advance();
    return row;
  }

  private Optional<Row> advance() {
    while (lines.hasNext()) {
      String line = Tidy.line(lines.next());
      number++;
      boolean passed = number >= firstData();
      if (!passed || line.isBlank() || (Headers.mayBeOne(line) && switches(line))) {
        continue;
      }
      if (current.equals(sheet.key())) {
        Optional<Row> row = row(line);
        if (row.isPresent()) {
          return row;
        }
      }
    }
    return Optional.empty();
  }

  private int firstData() {
    return keys.get(0).equals(sheet.key()) ? sheet.head().firstData() : 1;
  }

  private boolean switches(String line) {
    Optional<List<String>> names = Headers.names(line, sheet.dialect());
    if (names.isEmpty()) {
      return false;
    }
    String key = SheetSample.key(names.get());
    if (keys.contains(key)) {
      current = key;
      segment++;
      dropped.header();
    }
    return true;
  }

  private Optional<Row> row(String line) {
    if (!sheet.dialect().cut(line, cells)) {
      dropped.other();
      return Optional.empty();
    }
    boolean rows = time.kind() == TimeColumn.Kind.ROWS;
    double stamp = rows ? time.scale() * counted : time.seconds(cells);
    if (Double.isNaN(stamp) || (rows && !DataRow.is(cells))) {
      dropped.other();
      return Optional.empty();
    }
    counted++;
    double[] values = new double[channels.size()];
    Arrays.fill(values, Double.NaN);
    for (int c = 0; c < values.length; c++) {
      int column = channels.get(c).column().index();
      if (column >= time.values() && column < time.valuesEnd()) {
        values[c] = channels.get(c).value(cells, dropped);
      }
    }
    if (Arrays.stream(values).allMatch(Double::isNaN)) {
      dropped.other(); // a marker, an event, a row of other signals
      return Optional.empty();
    }
    dropped.row();
    return Optional.of(new Row(segment, number, stamp, values));
  }
}
