package corewright.bench.log.table;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether one column is a time, and of which kind and unit. */
final class TimeGuess {
  /** Stamps further apart than this cannot place a crank, s. */
  private static final double COARSEST_S = 5;

  private static final double SHORTEST_STEP_S = 2e-5;

  /** No tool that talks to a vehicle logs faster, s. */
  private static final double FINEST_LOG_S = 1e-3;

  /** Share of the values at either end that may be none: some tools write extremes below. */
  private static final double EDGE = 0.05;

  /** A time that falls back more often than this is a part of one, milliseconds say. */
  private static final double RISES = 0.9;

  /** Rows a stamp from which on two numbers are hours and minutes, not minutes and seconds. */
  private static final double ROWS_A_MINUTE = 40;

  /** Confidence in a name that is mostly another time's; taken only if there is no better. */
  static final double PERHAPS = 0.35;

  private final SheetSample sheet;
  private final ColumnFacts facts;
  private final boolean said;
  private final Optional<LogUnit> unit;

  /**
   * Prepares one.
   *
   * @param said whether a person named this column
   * @param unit that a person gave for times
   */
  TimeGuess(SheetSample sheet, ColumnFacts facts, boolean said, Optional<LogUnit> unit) {
    this.sheet = sheet;
    this.facts = facts;
    this.said = said;
    this.unit = unit;
  }

  Optional<TimeColumn> column() {
    Label label = facts.label();
    boolean elsewhere = Vocabulary.POSITION.in(label) || Vocabulary.NOT_TIME.in(label);
    if (!said && elsewhere) {
      return Optional.empty();
    }
    if (facts.clocks() > 0.6) {
      return clock();
    }
    return facts.numeric() > 0.6 ? inThousands().or(this::number) : Optional.empty();
  }

  /** The column with its mark parting thousands, where only that gives the steps of a recording. */
  private Optional<TimeColumn> inThousands() {
    char mark = facts.decimal();
    if (!Thousands.possible(cells(), mark)) {
      return Optional.empty();
    }
    ColumnFacts whole = facts.under(sheet, mark == '.' ? ',' : '.');
    Rise asWhole = rise(sheet, whole);
    Rise asFraction = rise(sheet, facts);
    double scale = unit.or(facts::unit).map(LogUnit::scale).orElse(1.0);
    boolean tooFine = scale < 1 && asFraction.median() * scale < FINEST_LOG_S;
    boolean onlyWay = asWhole.share() == 1 && asFraction.share() < 1;
    return onlyWay || tooFine ? new TimeGuess(sheet, whole, said, unit).number() : Optional.empty();
  }

  private List<String> cells() {
    return sheet.rows().stream()
        .map(r -> facts.index() < r.size() ? r.get(facts.index()) : "")
        .toList();
  }

  /** How the column moves over rows that follow each other. */
  static Rise rise(SheetSample sheet, ColumnFacts facts) {
    double[] values = new double[sheet.headRows().size()];
    System.arraycopy(facts.values(), 0, values, 0, values.length);
    return Rise.of(values);
  }

  private double byName() {
    Label label = facts.label();
    if (said) {
      return 1;
    }
    boolean core = Vocabulary.TIME_CORE.in(label);
    if (Vocabulary.PERHAPS_TIME.in(label)) {
      return core || facts.isA(LogUnit.Kind.SECOND) ? PERHAPS : 0;
    }
    if (core && Vocabulary.TIME.areAll(label)) {
      return 0.9;
    }
    return core ? 0.6 : 0;
  }

  private Optional<TimeColumn> clock() {
    List<String> cells = cells();
    double[] seconds = new double[cells.size()];
    Map<ClockCell.Form, Integer> forms = new EnumMap<>(ClockCell.Form.class);
    boolean turned = false;
    for (int i = 0; i < seconds.length; i++) {
      ClockCell cell = ClockCell.of(cells.get(i));
      seconds[i] = cell.seconds();
      forms.merge(cell.form(), 1, Integer::sum);
      double step = i > 0 ? seconds[i] - seconds[i - 1] : 0;
      turned |= step < -36_000 && step > -46_800 && seconds[i] < 13 * 3_600;
    }
    int minutes = forms.getOrDefault(ClockCell.Form.MINUTES, 0);
    int pairs = forms.getOrDefault(ClockCell.Form.TWO, 0);
    boolean hours = forms.getOrDefault(ClockCell.Form.HOURS, 0) >= minutes + pairs;
    boolean two = pairs > minutes;
    double[] head = java.util.Arrays.copyOf(seconds, sheet.headRows().size());
    Rise rise = Rise.of(head);
    double rowsAStamp = 1 / (1 - rise.level() + 1e-9);
    if (rise.share() < 0.5 || (!hours && two && rowsAStamp > ROWS_A_MINUTE)) {
      return Optional.empty();
    }
    TimeColumn.Kind kind =
        hours
            ? turned ? TimeColumn.Kind.HALF_DAY_CLOCK : TimeColumn.Kind.CLOCK
            : TimeColumn.Kind.MINUTES;
    String why =
        switch (kind) {
          case MINUTES -> "minutes and seconds in its cells";
          case HALF_DAY_CLOCK -> "times of day in its cells, on a dial of twelve hours";
          default -> "times of day in its cells";
        };
    return of(kind, 1, rise, Math.max(0.7, byName()), why);
  }

  private Optional<TimeColumn> number() {
    Rise rise = rise(sheet, facts);
    double name = byName();
    boolean seconds = facts.isA(LogUnit.Kind.SECOND);
    boolean otherUnit = facts.unit().isPresent() && !seconds;
    boolean dated = Vocabulary.DATE.in(facts.label()) && dayNumbers(rise.median());
    boolean nameless = facts.label().blank() && rise.share() > 0.99 && rise.level() < 0.3;
    if (rise.share() < 0.5 || otherUnit || (name == 0 && !seconds && !nameless && !dated)) {
      return Optional.empty();
    }
    if (name < 0.5 && !dated && (rise.share() < 0.9 || rise.level() > 0.5)) {
      return Optional.empty();
    }
    double sure = name > 0 ? name : seconds ? 0.5 : 0.4;
    double confidence = rise.share() < RISES ? Math.min(sure, PERHAPS) : sure;
    Optional<LogUnit> stated = unit.or(() -> seconds ? facts.unit() : Optional.empty());
    if (stated.isPresent()) {
      double scale = stated.get().scale();
      double step = rise.median() * scale;
      boolean likely = step >= SHORTEST_STEP_S && step <= COARSEST_S;
      return likely
          ? of(TimeColumn.Kind.NUMBER, scale, rise, confidence, "its name and unit")
          : Optional.empty();
    }
    Inferred inferred = inferred(rise.median());
    double step = rise.median() * inferred.scale;
    return step < SHORTEST_STEP_S
        ? Optional.empty()
        : of(TimeColumn.Kind.NUMBER, inferred.scale, rise, confidence, inferred.words);
  }

  private record Inferred(double scale, String words) {}

  /** The unit under which the step from row to row is one that loggers have. */
  private Inferred inferred(double step) {
    boolean partOfDay = facts.quantile(EDGE) >= 0 && facts.quantile(1 - EDGE) <= 1 && step < 1e-4;
    if (dayNumbers(step) || partOfDay) {
      return new Inferred(86_400, "days as a spreadsheet counts them, by its range");
    }
    if (step > 5_000) {
      return new Inferred(1e-6, "microseconds by its steps");
    }
    if (step > 3) {
      return new Inferred(1e-3, "milliseconds by its steps");
    }
    return new Inferred(1, "seconds by its steps");
  }

  private boolean dayNumbers(double step) {
    return facts.quantile(EDGE) > 20_000 && facts.quantile(1 - EDGE) < 80_000 && step < 2e-3;
  }

  private Optional<TimeColumn> of(
      TimeColumn.Kind kind, double scale, Rise rise, double confidence, String why) {
    double stamp_s = rise.median() * scale;
    boolean shared = rise.level() > 0.25;
    if (shared && stamp_s > COARSEST_S) {
      return Optional.empty();
    }
    boolean many = rise.level() > 0.6; // three and more rows a stamp are no group of one poll
    boolean coarse = shared && (stamp_s >= 0.9 || (many && stamp_s >= 0.4));
    double finer = 0.05 * (1 - rise.level());
    String words = coarse ? why + "; rows that share a stamp are spread over it" : why;
    return Optional.of(
        new TimeColumn(facts, kind, scale, coarse, false, confidence + finer - 0.05, words, 0, 0));
  }
}
