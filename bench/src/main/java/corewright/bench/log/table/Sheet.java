package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The rows under one header, ready to be gone through, with all that was guessed about them. */
public final class Sheet {
  private final LogText text;
  private final SheetSample sample;
  private final List<String> keys;
  private final List<Column> columns;
  private final TimeColumns times;
  private final List<Channel> channels = new ArrayList<>();

  Sheet(
      LogText text,
      SheetSample sample,
      List<String> keys,
      List<Column> columns,
      List<ColumnFacts> facts,
      TimeColumns times) {
    this.text = text;
    this.sample = sample;
    this.keys = List.copyOf(keys);
    this.columns = List.copyOf(columns);
    this.times = times;
    for (Column c : columns) {
      if (c.role().kept()) {
        channels.add(new Channel(c, facts.get(c.index())));
      }
    }
  }

  /** Every column of the sheet and what it was taken for. */
  public List<Column> columns() {
    return columns;
  }

  /** The kept columns, in the order of the values of a row. */
  public List<Column> channels() {
    return channels.stream().map(Channel::column).toList();
  }

  /**
   * The smallest difference between two values of a kept column, in its unit; NaN if all are the
   * same.
   */
  public double quantum(int channel) {
    return channels.get(channel).quantum();
  }

  /**
   * Where the output stays when nothing pulls, V: what a tenth of its samples lie above. Empty
   * without an output.
   */
  public OptionalDouble restOfOutput() {
    return restOf(Role.OUTPUT);
  }

  /** The same of the supply that stands first, V. */
  public OptionalDouble restOfSupply() {
    return restOf(Role.SUPPLY);
  }

  private OptionalDouble restOf(Role role) {
    return channels.stream()
        .filter(c -> c.column().role() == role)
        .mapToDouble(Channel::rest)
        .findFirst();
  }

  /** Line of the header, counted from 1; 0 where there is none. */
  public int headerLine() {
    return sample.head().headerLine();
  }

  /** How lines are cut, for people. */
  public String dialect() {
    return sample.dialect().words();
  }

  public TimeReport time() {
    TimeColumn first = times.columns().get(0);
    String name =
        first.kind() == TimeColumn.Kind.ROWS ? "rows" : columns.get(first.facts().index()).title();
    boolean perSignal = times.columns().size() > 1;
    String how =
        first.why()
            + (perSignal ? "; each signal has its own" : "")
            + (fromFirst() ? "; seconds count from the first row" : "");
    return new TimeReport(name, how, first.confidence(), first.assumed(), perSignal);
  }

  /**
   * Goes through the rows in the order of time. A row holds one value for each of {@link
   * #channels}.
   *
   * @param dropped is told what was left out
   * @throws corewright.files.BadFile if too many rows stand in the wrong place
   */
  public <T> T rows(Dropped dropped, Function<Iterator<Row>, T> use) {
    T answer =
        open(
            0,
            new ArrayList<>(),
            dropped,
            rows -> use.apply(fromFirst() ? new FromFirst(rows) : rows));
    if (dropped.misplaced() > 0.02 * dropped.rows()) {
      throw Unreadable.at(
          text.name(),
          Math.max(1, headerLine()),
          times.columns().get(0).facts().index() + 1,
          dropped.misplaced() + " of " + dropped.rows() + " rows do not follow each other in time",
          "Export the recording again, sorted by time");
    }
    return answer;
  }

  /** Times of day and dates are counted from the first row; a stop watch keeps its own figures. */
  private boolean fromFirst() {
    TimeColumn first = times.columns().get(0);
    double largest_s = Math.abs(first.scale()) * first.facts().greatest();
    return first.wrap_s() > 0 || largest_s > 1e6;
  }

  private <T> T open(
      int signal, List<Iterator<Row>> opened, Dropped dropped, Function<Iterator<Row>, T> use) {
    if (signal == times.columns().size()) {
      return use.apply(opened.size() == 1 ? opened.get(0) : new MergedRows(opened));
    }
    TimeColumn time = times.columns().get(signal);
    Dropped counted = signal == 0 ? dropped : new Dropped();
    return text.lines(
        lines -> {
          Iterator<Row> rows = new LineRows(lines, sample, keys, time, channels, counted);
          Iterator<Row> ordered = new TimeOrder(rows, time.wrap_s(), counted);
          opened.add(new Stamps(ordered, time.coarse(), counted));
          return open(signal + 1, opened, dropped, use);
        });
  }
}
