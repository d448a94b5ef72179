package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.List;

/** Logs with a time column of its own for each signal: time1, val1, time2, val2 and so on. */
final class SignalTimes {
  private final List<TimeColumn> times;
  private final List<ColumnFacts> facts;

  SignalTimes(List<TimeColumn> times, List<ColumnFacts> facts) {
    this.times = times;
    this.facts = facts;
  }

  /** Each time with the columns that it belongs to; empty where there is one time for all. */
  List<TimeColumn> groups() {
    if (times.size() < 2) {
      return List.of();
    }
    List<TimeColumn> after = new ArrayList<>();
    List<TimeColumn> before = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      int at = times.get(i).facts().index();
      int next = i + 1 < times.size() ? times.get(i + 1).facts().index() : facts.size();
      int last = i > 0 ? times.get(i - 1).facts().index() + 1 : 0;
      if (owns(times.get(i), at + 1, next)) {
        after.add(times.get(i).over(at + 1, next));
      }
      if (owns(times.get(i), last, at)) {
        before.add(times.get(i).over(last, at));
      }
    }
    int first = times.get(0).facts().index();
    if (after.size() == times.size() && first <= 1) {
      return after;
    }
    return before.size() == times.size() && first > 0 ? before : List.of();
  }

  /** A time of a signal is called time and nothing else, or by the signal's own words. */
  private boolean owns(TimeColumn time, int from, int to) {
    Label label = time.facts().label();
    boolean values = false;
    for (int c = from; c < to; c++) {
      values |= !facts.get(c).empty();
    }
    if (!values) {
      return false;
    }
    boolean plain = Vocabulary.TIME.areAll(label) || numbered(label);
    return plain || label.words().stream().allMatch(w -> isTimeWord(w) || named(w, from, to));
  }

  private static boolean numbered(Label label) {
    return label.words().stream()
        .allMatch(w -> w.chars().allMatch(Character::isDigit) || isTimeWord(w));
  }

  private static boolean isTimeWord(String word) {
    Label one = new Label(word, List.of(word), word, java.util.Optional.empty());
    return Vocabulary.TIME_CORE.in(one) || Vocabulary.TIME.in(one);
  }

  private boolean named(String word, int from, int to) {
    return facts.subList(from, to).stream().anyMatch(f -> f.label().words().contains(word));
  }
}
