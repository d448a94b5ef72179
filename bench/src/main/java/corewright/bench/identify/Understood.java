package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.profiles.Cue;
import corewright.profiles.DateFormat;
import corewright.profiles.Scale;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What an answer as it was read means to the key. What cannot be read in one way only gives no
 * vote, and says why: wrong is worse than missing.
 *
 * @param answer one of the cue's answers, or {@link Identifier#NOT_SEEN}
 * @param doubt why it was not taken, a clause; empty where it was
 * @param impossible no unit of the family can carry what was read
 */
record Understood(String answer, String doubt, boolean impossible) {

  static Understood of(Cue cue, CueAnswer given) {
    if (cue.scale().isEmpty() || given.read().isBlank()) {
      return new Understood(given.answer(), "", false);
    }
    Scale scale = cue.scale().get();
    return scale.isDate()
        ? date(scale, given.read(), given.when().atZone(ZoneOffset.UTC).toLocalDate())
        : number(scale, given.read());
  }

  /** The one week that a date code means; 0 where it means none, or more than one answer. */
  static int week(Cue cue, CueAnswer given) {
    if (cue.scale().isEmpty() || !cue.scale().get().isDate()) {
      return 0;
    }
    Set<Integer> weeks = weeks(cue.scale().get(), DateFormat.digits(given.read()));
    weeks.removeIf(w -> w > today(given));
    return weeks.size() == 1 ? weeks.iterator().next() : 0;
  }

  private static Understood date(Scale scale, String read, LocalDate seen) {
    String digits = DateFormat.digits(read);
    if (digits.isEmpty() || scale.formats().stream().noneMatch(f -> f.fits(digits))) {
      return impossible("it is not written as the family's dates are, " + formats(scale));
    }
    Set<Integer> weeks = weeks(scale, digits);
    if (weeks.isEmpty()) {
      return impossible("the calendar has no such week or day (" + formats(scale) + ")");
    }
    Set<Integer> past = new TreeSet<>(weeks);
    past.removeIf(w -> w > DateFormat.weekOf(seen));
    if (past.isEmpty()) {
      return impossible(words(weeks) + " had not come when it was read");
    }
    Set<Integer> made = new TreeSet<>(past);
    made.removeIf(w -> scale.answer(w).isEmpty());
    if (made.isEmpty()) {
      return impossible("no unit of the family was made in " + words(past));
    }
    List<String> answers = made.stream().flatMap(w -> scale.answer(w).stream()).distinct().toList();
    return answers.size() == 1
        ? new Understood(answers.get(0), "", false)
        : doubtful("it can be " + words(made));
  }

  private static Understood number(Scale scale, String read) {
    Quantified number = Quantified.of(read, scale.unit());
    if (Double.isNaN(number.value())) {
      return doubtful("it is no number of " + scale.unit());
    }
    List<String> answers =
        scale.bands().stream()
            .filter(
                b ->
                    number.value() + number.expanded() >= b.from()
                        && number.value() - number.expanded() < b.to())
            .map(Scale.Band::answer)
            .distinct()
            .toList();
    return switch (answers.size()) {
      case 0 -> impossible("no build has that");
      case 1 -> new Understood(answers.get(0), "", false);
      default -> doubtful("within its uncertainty it can be " + String.join(" or ", answers));
    };
  }

  private static Set<Integer> weeks(Scale scale, String digits) {
    Set<Integer> weeks = new TreeSet<>();
    scale.formats().forEach(f -> weeks.addAll(f.weeks(digits)));
    return weeks;
  }

  private static int today(CueAnswer given) {
    return DateFormat.weekOf(given.when().atZone(ZoneOffset.UTC).toLocalDate());
  }

  private static String formats(Scale scale) {
    return scale.formats().stream().map(DateFormat::pattern).collect(Collectors.joining(" or "));
  }

  private static String words(Set<Integer> weeks) {
    return weeks.stream().map(DateFormat::words).collect(Collectors.joining(" or "));
  }

  private static Understood impossible(String doubt) {
    return new Understood(Identifier.NOT_SEEN, doubt, true);
  }

  private static Understood doubtful(String doubt) {
    return new Understood(Identifier.NOT_SEEN, doubt, false);
  }
}
