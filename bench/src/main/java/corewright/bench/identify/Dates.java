package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.DateFormat;
import corewright.profiles.Scale;
import corewright.profiles.Variant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What the dates on a unit say against its build, and against each other. */
final class Dates {
  /** Two dates further apart than this are not of one making. */
  private static final int APART_weeks = 26;

  private final Answered answered;
  private final Variant winner;

  Dates(Answered answered, Variant winner) {
    this.answered = answered;
    this.winner = winner;
  }

  /** How far the date of a cue lies outside the time in which the winner was made. */
  Optional<String> outside(Cue cue) {
    int week = week(cue);
    List<Scale.Band> made =
        cue.scale().map(s -> s.bands(Votes.expected(cue, winner))).orElse(List.of());
    if (week == 0 || made.isEmpty()) {
      return Optional.empty();
    }
    int first = (int) made.get(0).from();
    int end = (int) made.get(made.size() - 1).to();
    if (week >= end) {
      return Optional.of(
          DateFormat.words(week)
              + ", "
              + (DateFormat.between(end, week) + 1)
              + " weeks after the last "
              + winner.id()
              + " was made");
    }
    return week < first
        ? Optional.of(
            DateFormat.words(week)
                + ", "
                + DateFormat.between(week, first)
                + " weeks before the first "
                + winner.id()
                + " was made")
        : Optional.empty();
  }

  /** Whether the label carries a date that means one week. */
  boolean readable() {
    return label().filter(c -> week(c) > 0).isPresent();
  }

  /** A label date after the end of the build. */
  boolean afterTheEnd() {
    return label().filter(c -> outside(c).map(s -> s.contains("after")).orElse(false)).isPresent();
  }

  /** A label date that the calendar or the family does not know. */
  boolean impossible() {
    return label()
        .filter(
            c ->
                Optional.ofNullable(answered.understood().get(c)).stream()
                    .anyMatch(Understood::impossible))
        .isPresent();
  }

  /** Parts that are younger than the label, in a sentence. */
  Optional<String> partsYounger() {
    OptionalInt label = label().stream().mapToInt(this::week).filter(w -> w > 0).findFirst();
    OptionalInt parts =
        answered.given().keySet().stream()
            .filter(c -> c.travelsWith() == TravelsWith.BOARD)
            .mapToInt(this::week)
            .filter(w -> w > 0)
            .max();
    if (label.isEmpty() || parts.isEmpty()) {
      return Optional.empty();
    }
    long weeks = DateFormat.between(label.getAsInt(), parts.getAsInt());
    return weeks > APART_weeks
        ? Optional.of(
            String.format(
                "Its youngest part is of %s, %d weeks after the label's %s: it was repaired since,"
                    + " or the label is another unit's.",
                DateFormat.words(parts.getAsInt()), weeks, DateFormat.words(label.getAsInt())))
        : Optional.empty();
  }

  private Optional<Cue> label() {
    return answered.given().keySet().stream()
        .filter(c -> c.travelsWith() == TravelsWith.LABEL && c.scale().isPresent())
        .findFirst();
  }

  private int week(Cue cue) {
    CueAnswer given = answered.given().get(cue);
    return given == null ? 0 : Understood.week(cue, given);
  }
}
