package corewright.bench.identify;

import corewright.bench.record.Hypothesis;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What may have happened to a unit before it came: it is as it was made, its label is another
 * unit's, somebody has rebuilt it, or it was put together from two. Bayes' rule over the clues that
 * were looked for: what was not looked for gives no factor. All shares are the trade's judgement, a
 * start for a shop's own.
 */
final class History {
  /** What may have happened, with its share among arriving cores. */
  enum Past {
    AS_MADE("as made", 0.80, ""),
    RELABELLED(
        "relabelled",
        0.08,
        "The label identifies nothing: quote and order by the unit under it, grade it C at best,"
            + " and note it for its supplier."),
    REBUILT_BEFORE(
        Hypothesis.REBUILT_BEFORE,
        0.09,
        "Treat it as a rebuilt one: look at pads and footprints before its kit is ordered, and"
            + " count on a lower yield."),
    MIXED(
        "mixed",
        0.03,
        "Two units in one: the half with the board decides; try whether both halves still seal.");

    private final String id;
    private final double prior;
    private final String handling;

    Past(String id, double prior, String handling) {
      this.id = id;
      this.prior = prior;
      this.handling = handling;
    }
  }

  /** What can be seen, and how often it is seen after each past, in the order of {@link Past}. */
  enum Clue {
    LABEL_DISAGREES("the label speaks for another build", 0.05, 0.80, 0.10, 0.30),
    DATE_IMPOSSIBLE("the label's date cannot be", 0.02, 0.25, 0.03, 0.05),
    DATE_AFTER_END("the label is younger than the build", 0.03, 0.40, 0.05, 0.20),
    PARTS_YOUNGER("parts are younger than the label", 0.02, 0.10, 0.60, 0.20),
    FILLING_DISAGREES("filling or mass is not that of the board", 0.04, 0.06, 0.35, 0.10),
    HOUSING_DISAGREES("the housing is not that of the board", 0.05, 0.15, 0.10, 0.70),
    LABEL_MOVED("the label was moved", 0.02, 0.60, 0.10, 0.15),
    LABEL_COPIED("the label is not the maker's", 0.01, 0.40, 0.03, 0.05),
    OPENED("it was opened", 0.04, 0.15, 0.85, 0.50),
    REFILLED("it was filled again", 0.01, 0.03, 0.60, 0.05),
    RESOLDERED("it was soldered by hand", 0.02, 0.05, 0.80, 0.10),
    FOREIGN_SEAL("it carries another shop's mark", 0.01, 0.05, 0.85, 0.20),
    MIXED_HALVES("its halves are of two castings", 0.01, 0.05, 0.15, 0.90);

    private final String words;
    private final double asMade;
    private final double relabelled;
    private final double rebuilt;
    private final double mixed;

    Clue(String words, double asMade, double relabelled, double rebuilt, double mixed) {
      this.words = words;
      this.asMade = asMade;
      this.relabelled = relabelled;
      this.rebuilt = rebuilt;
      this.mixed = mixed;
    }

    double given(Past past) {
      return switch (past) {
        case AS_MADE -> asMade;
        case RELABELLED -> relabelled;
        case REBUILT_BEFORE -> rebuilt;
        case MIXED -> mixed;
      };
    }
  }

  private final Answered answered;
  private final Conflicts conflicts;
  private final Dates dates;

  History(Answered answered, Conflicts conflicts, Dates dates) {
    this.answered = answered;
    this.conflicts = conflicts;
    this.dates = dates;
  }

  /** All four, the most probable first; none where nothing was looked at. */
  List<Hypothesis> hypotheses() {
    Map<Clue, Boolean> clues = clues();
    return clues.isEmpty() ? List.of() : hypotheses(clues);
  }

  static List<Hypothesis> hypotheses(Map<Clue, Boolean> clues) {
    Map<Past, Double> weight = new EnumMap<>(Past.class);
    for (Past past : Past.values()) {
      double p = past.prior;
      for (Map.Entry<Clue, Boolean> clue : clues.entrySet()) {
        double share = clue.getKey().given(past);
        p *= clue.getValue() ? share : 1 - share;
      }
      weight.put(past, p);
    }
    double sum = weight.values().stream().mapToDouble(Double::doubleValue).sum();
    List<Hypothesis> all = new ArrayList<>();
    weight.forEach((past, p) -> all.add(hypothesis(past, p / sum, clues)));
    all.sort(Comparator.comparingDouble(Hypothesis::probability).reversed());
    return List.copyOf(all);
  }

  private static Hypothesis hypothesis(Past past, double probability, Map<Clue, Boolean> clues) {
    List<String> because =
        clues.entrySet().stream()
            .filter(Map.Entry::getValue)
            .map(Map.Entry::getKey)
            .filter(c -> c.given(past) > c.given(Past.AS_MADE))
            .sorted(Comparator.comparingDouble((Clue c) -> -c.given(past) / c.given(Past.AS_MADE)))
            .map(c -> c.words)
            .toList();
    return new Hypothesis(past.id, probability, because, past.handling);
  }

  /** What was looked for, and whether it was there. */
  private Map<Clue, Boolean> clues() {
    Map<Clue, Boolean> clues = new EnumMap<>(Clue.class);
    answered.signs().forEach(s -> clues.put(clue(s), true));
    answered.noSigns().forEach(s -> clues.put(clue(s), false));
    boolean label = saw(TravelsWith.LABEL);
    boolean unit = saw(TravelsWith.BOARD) || saw(TravelsWith.COVER) || saw(TravelsWith.HEADER);
    if (label && unit) {
      clues.put(Clue.LABEL_DISAGREES, conflicts.labelDisagrees());
    }
    if (dates.readable()) {
      clues.put(Clue.DATE_AFTER_END, dates.afterTheEnd());
    }
    if (dates.impossible()) {
      clues.put(Clue.DATE_IMPOSSIBLE, true);
    }
    if (dates.partsYounger().isPresent()) {
      clues.put(Clue.PARTS_YOUNGER, true);
    }
    boolean board = conflicts.boardAgrees();
    if (board && saw(TravelsWith.COVER)) {
      clues.put(Clue.HOUSING_DISAGREES, conflicts.disagree(TravelsWith.COVER));
    }
    if (board && conflicts.disagree(TravelsWith.BOARD)) {
      clues.put(Clue.FILLING_DISAGREES, true);
    }
    return clues;
  }

  private boolean saw(TravelsWith with) {
    return answered.seen().keySet().stream().map(Cue::travelsWith).anyMatch(with::equals);
  }

  private static Clue clue(Sign sign) {
    return switch (sign) {
      case LABEL_MOVED -> Clue.LABEL_MOVED;
      case LABEL_COPIED -> Clue.LABEL_COPIED;
      case OPENED -> Clue.OPENED;
      case REFILLED -> Clue.REFILLED;
      case RESOLDERED -> Clue.RESOLDERED;
      case FOREIGN_SEAL -> Clue.FOREIGN_SEAL;
      case MIXED_HALVES -> Clue.MIXED_HALVES;
    };
  }
}
