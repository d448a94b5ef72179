package corewright.bench.log.table;

import java.util.Arrays;
import java.util.Map;

/** A kept column while its cells are read. */
final class Channel {
  private static final double MOST_SUPPLY_V = 36;
  private static final double MOST_OUTPUT_V = 150;
  private static final double MOST_SPEED = 6000;

  private static final Map<String, Double> WORDS =
      Map.ofEntries(
          Map.entry("yes", 1.0),
          Map.entry("ja", 1.0),
          Map.entry("oui", 1.0),
          Map.entry("si", 1.0),
          Map.entry("sim", 1.0),
          Map.entry("tak", 1.0),
          Map.entry("on", 1.0),
          Map.entry("ok", 1.0),
          Map.entry("true", 1.0),
          Map.entry("sync", 1.0),
          Map.entry("synced", 1.0),
          Map.entry("no", 0.0),
          Map.entry("nein", 0.0),
          Map.entry("non", 0.0),
          Map.entry("nie", 0.0),
          Map.entry("nee", 0.0),
          Map.entry("nej", 0.0),
          Map.entry("nao", 0.0),
          Map.entry("off", 0.0),
          Map.entry("false", 0.0),
          Map.entry("lost", 0.0),
          Map.entry("no sync", 0.0),
          Map.entry("not synced", 0.0));

  private final Column column;
  private final ColumnFacts facts;
  private final double typical;
  private final double quantum;
  private final double rest;

  /** What this column of engine speed prints where it has none, ascending. */
  private final double[] speedCodes;

  Channel(Column column, ColumnFacts facts) {
    this.column = column;
    this.facts = facts;
    this.typical = typicalOf(facts);
    this.speedCodes = column.role() == Role.SPEED ? NoData.ofSpeed(facts) : new double[0];
    double[] measured = Arrays.stream(facts.sorted()).filter(v -> !NoData.is(v, typical)).toArray();
    this.quantum = column.scale() * Steps.of(measured);
    this.rest =
        measured.length == 0
            ? Double.NaN
            : column.scale() * measured[(int) Math.min(measured.length - 1, 0.9 * measured.length)];
  }

  /** The value that a tenth of the samples lie above, in the channel's unit. */
  double rest() {
    return rest;
  }

  double quantum() {
    return quantum;
  }

  /** The middle of what is not zero, as printed. */
  private static double typicalOf(ColumnFacts facts) {
    double[] positive = Arrays.stream(facts.sorted()).filter(v -> v > 0).toArray();
    return positive.length == 0 ? 0 : positive[positive.length / 2];
  }

  Column column() {
    return column;
  }

  double value(Cells cells, Dropped dropped) {
    int i = column.index();
    if (cells.blank(i)) {
      return Double.NaN;
    }
    double printed = NumberCell.value(cells.line(), cells.from(i), cells.to(i), column.decimal());
    if (Double.isNaN(printed) && column.role() == Role.SYNC) {
      return WORDS.getOrDefault(Folded.of(cells.text(i)), Double.NaN);
    }
    if (column.role() == Role.SPEED && Arrays.binarySearch(speedCodes, printed) >= 0) {
      dropped.cellWithoutData();
      return Double.NaN;
    }
    boolean voltage = column.role() == Role.SUPPLY || column.role() == Role.OUTPUT;
    if (Double.isNaN(printed) || (voltage && NoData.is(printed, typical))) {
      dropped.cellWithoutData();
      return Double.NaN;
    }
    boolean bare = Character.isDigit(cells.line().charAt(cells.to(i) - 1));
    double value = printed * column.scale() * (bare ? 1 : facts.factor(cells.text(i)));
    if (Double.isNaN(value)) {
      dropped.cellWithoutData();
      return Double.NaN;
    }
    if (value < 0 || value > most()) {
      dropped.cellOutOfRange();
      return Double.NaN;
    }
    return value;
  }

  private double most() {
    return switch (column.role()) {
      case SUPPLY -> MOST_SUPPLY_V;
      case OUTPUT -> MOST_OUTPUT_V;
      case SPEED -> MOST_SPEED;
      default -> Double.MAX_VALUE;
    };
  }
}
