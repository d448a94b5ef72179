package corewright.bench.log.table;

import corewright.files.BadFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a sheet keeps its time: one column for all, one for each signal, a frame number, nothing.
 * Frames and nothing are accepted only with a rate that a person typed.
 */
record TimeColumns(List<TimeColumn> columns, Optional<ColumnFacts> frame) {

  TimeColumns {
    columns = List.copyOf(columns);
  }

  static TimeColumns find(
      String file, SheetSample sheet, List<ColumnFacts> facts, Choices choices) {
    Optional<ColumnFacts> frame = facts.stream().filter(f -> isFrame(f, sheet)).findFirst();
    if (choices.rate_Hz().isPresent()) {
      double period_s = 1 / choices.rate_Hz().getAsDouble();
      TimeColumn counted =
          frame
              .map(f -> assumed(f, TimeColumn.Kind.FRAME, period_s, facts.size()))
              .orElseGet(() -> assumed(facts.get(0), TimeColumn.Kind.ROWS, period_s, facts.size()));
      return new TimeColumns(List.of(counted), frame);
    }
    Optional<LogUnit> unit =
        Optional.ofNullable(choices.units().get(Role.TIME)).flatMap(LogUnit::of);
    List<TimeColumn> candidates = new ArrayList<>();
    for (ColumnFacts f : facts) {
      boolean isFrame = frame.filter(x -> x == f).isPresent();
      if (!isFrame) {
        new TimeGuess(sheet, f, said(choices, f), unit).column().ifPresent(candidates::add);
      }
    }
    List<TimeColumn> plain =
        candidates.stream().filter(t -> t.confidence() > TimeGuess.PERHAPS + 0.01).toList();
    List<TimeColumn> perSignal = new SignalTimes(plain, facts).groups();
    if (!perSignal.isEmpty()) {
      return new TimeColumns(perSignal, frame);
    }
    TimeColumn best =
        candidates.stream()
            .max(Comparator.comparingDouble(TimeColumn::confidence))
            .orElseThrow(() -> noTime(file, sheet, facts, frame));
    return new TimeColumns(List.of(best.over(0, facts.size())), frame);
  }

  private static TimeColumn assumed(ColumnFacts f, TimeColumn.Kind kind, double period_s, int end) {
    String what = kind == TimeColumn.Kind.FRAME ? "frames" : "rows";
    return new TimeColumn(
        f,
        kind,
        period_s,
        false,
        true,
        0.5,
        "assumed: " + what + " at the rate that was typed",
        0,
        end);
  }

  private static boolean said(Choices choices, ColumnFacts f) {
    return choices.columns().getOrDefault(Role.TIME, List.of()).stream()
        .anyMatch(
            w ->
                w.equals(String.valueOf(f.index() + 1))
                    || Folded.of(w).equals(Folded.of(f.label().original())));
  }

  private static boolean isFrame(ColumnFacts f, SheetSample sheet) {
    boolean whole = f.numeric() > 0.6 && f.sorted().length > 0 && wholeNumbers(f);
    if (!whole || Vocabulary.TIME_CORE.in(f.label()) || f.isA(LogUnit.Kind.SECOND)) {
      return false;
    }
    Rise rise = TimeGuess.rise(sheet, f);
    boolean counts = rise.share() > 0.97 && rise.level() < 0.5;
    boolean named = Vocabulary.FRAME.areAll(f.label());
    return counts && (named || (f.label().blank() && rise.wholeSteps()));
  }

  private static boolean wholeNumbers(ColumnFacts f) {
    for (double v : f.sorted()) {
      if (v != Math.rint(v)) {
        return false;
      }
    }
    return true;
  }

  private static BadFile noTime(
      String file, SheetSample sheet, List<ColumnFacts> facts, Optional<ColumnFacts> frame) {
    Optional<ColumnFacts> named =
        facts.stream()
            .filter(f -> Vocabulary.TIME_CORE.in(f.label()) && !Vocabulary.NOT_TIME.in(f.label()))
            .findFirst();
    int column = 1 + frame.or(() -> named).map(ColumnFacts::index).orElse(0);
    String found =
        frame.isPresent()
            ? "there are frame numbers here and no time"
            : named
                .map(
                    f ->
                        "the stamps of '"
                            + Inert.text(f.label().original())
                            + "' do not rise from row to row, or not by steps of a recording")
                .orElse("no column of times was found");
    return Unreadable.at(
        file,
        Math.max(1, sheet.head().headerLine()),
        column,
        found,
        "Say how many rows or frames a second were recorded with --rate, or what the time is with"
            + " --column time=NAME and --unit time=ms");
  }
}
