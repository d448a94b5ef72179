package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.measures.Figures;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What was seen and does not fit the most probable variant. */
final class Conflicts {
  /** From here on a cue counts as highly reliable. */
  static final double HIGH = 0.9;

  /** A bench cue this sure, as the pin map, can say that it is another family altogether. */
  private static final double VETO = 0.97;

  private final Key key;
  private final Answered answered;
  private final Map<Cue, String> seen;
  private final Variant winner;
  private final Dates dates;

  Conflicts(Key key, Answered answered, Variant winner, Dates dates) {
    this.key = key;
    this.answered = answered;
    this.seen = answered.seen();
    this.winner = winner;
    this.dates = dates;
  }

  /** One sentence, and how reliable what says it is. */
  private record Weighed(double reliability, String sentence) {}

  /**
   * A bench cue that no build of the family gives: it is another family, whatever the label says.
   */
  Optional<Cue> veto() {
    return seen.keySet().stream()
        .filter(c -> c.travelsWith() == TravelsWith.BENCH && c.reliability() >= VETO)
        .filter(this::fitsNoVariant)
        .findFirst();
  }

  /** Something disagrees that must be settled before the build counts as identified. */
  boolean open() {
    return worstOpen() > 0 || swappedLabel().isPresent();
  }

  /** Whether a look at this cue could settle what is open. */
  boolean couldSettle(Cue cue) {
    boolean unit =
        cue.travelsWith() == TravelsWith.BOARD
            || (worstOpen() == 0 && cue.travelsWith() == TravelsWith.BENCH);
    return unit && cue.reliability() > worstOpen() && !Votes.expected(cue, winner).isEmpty();
  }

  /**
   * Reliability of the worst highly reliable cue that disagrees, 0 if there is none or if something
   * more reliable that travels with the board has settled it: a cover or a header can be another
   * unit's, a board cannot.
   */
  private double worstOpen() {
    double settled =
        agreeing()
            .filter(c -> c.travelsWith() == TravelsWith.BOARD)
            .mapToDouble(Cue::reliability)
            .max()
            .orElse(0);
    return cues()
        .mapToDouble(Cue::reliability)
        .filter(r -> r >= HIGH && r >= settled)
        .max()
        .orElse(0);
  }

  /**
   * The variant that the label speaks for, where it is not the winner, something else would be done
   * with it, and nothing that travels with the board has settled it.
   */
  Optional<Variant> swappedLabel() {
    boolean settled =
        agreeing()
            .anyMatch(
                c -> c.travelsWith() == TravelsWith.BOARD || c.travelsWith() == TravelsWith.BENCH);
    Map<Variant, Double> label = Votes.label(key.variants(), seen);
    double forWinner = label.getOrDefault(winner, 1.0);
    return label.entrySet().stream()
        .filter(e -> !settled && e.getValue() > forWinner)
        .filter(e -> !Fate.of(e.getKey()).equals(Fate.of(winner)))
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey);
  }

  /** Worst first, each a sentence. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    veto()
        .ifPresent(
            c ->
                sentences.add(
                    String.format(
                        "Stop: '%s' was found to be %s, and no build of %s is like that.",
                        c.id(), seen.get(c), key.family().id())));
    swappedLabel()
        .ifPresent(
            v ->
                sentences.add(
                    String.format(
                        "The label speaks for %s, the unit under it for %s: label or cover may have"
                            + " been changed.",
                        v.id(), winner.id())));
    List<Weighed> weighed = new ArrayList<>();
    cues().map(c -> new Weighed(c.reliability(), sentence(c))).forEach(weighed::add);
    dates.partsYounger().ifPresent(s -> weighed.add(new Weighed(HIGH, s)));
    answered
        .understood()
        .forEach(
            (cue, means) -> {
              if (!means.doubt().isEmpty()) {
                weighed.add(new Weighed(cue.reliability(), unused(cue, means)));
              }
            });
    weighed.stream()
        .sorted(Comparator.comparingDouble(Weighed::reliability).reversed())
        .map(Weighed::sentence)
        .forEach(sentences::add);
    return List.copyOf(sentences);
  }

  /** Whether the label speaks for another build than the rest, settled or not. */
  boolean labelDisagrees() {
    Map<Variant, Double> label = Votes.label(key.variants(), seen);
    double forWinner = label.getOrDefault(winner, 1.0);
    return label.values().stream().anyMatch(p -> p > forWinner);
  }

  /** Whether something that only the board can say agrees with the winner. */
  boolean boardAgrees() {
    return agreeing()
        .anyMatch(
            c -> c.travelsWith() == TravelsWith.BOARD || c.travelsWith() == TravelsWith.BENCH);
  }

  /** Whether something that travels so disagrees with the winner. */
  boolean disagree(TravelsWith with) {
    return cues().anyMatch(c -> c.travelsWith() == with);
  }

  private Stream<Cue> cues() {
    return seen.entrySet().stream()
        .filter(e -> disagrees(e.getKey(), e.getValue(), winner))
        .map(Map.Entry::getKey)
        .sorted(Comparator.comparingDouble(Cue::reliability).reversed().thenComparing(Cue::id));
  }

  private Stream<Cue> agreeing() {
    return seen.entrySet().stream()
        .filter(e -> Votes.expected(e.getKey(), winner).contains(e.getValue()))
        .map(Map.Entry::getKey);
  }

  private boolean fitsNoVariant(Cue cue) {
    return key.variants().stream().allMatch(v -> disagrees(cue, seen.getOrDefault(cue, ""), v));
  }

  private static boolean disagrees(Cue cue, String answer, Variant variant) {
    List<String> expected = Votes.expected(cue, variant);
    return !expected.isEmpty() && !expected.contains(answer);
  }

  private String sentence(Cue cue) {
    CueAnswer given = answered.given().get(cue);
    String read = given == null ? seen.getOrDefault(cue, "") : given.words();
    return String.format(
        "'%s' was read as %s, %s (reliability %s).",
        cue.id(),
        read,
        dates
            .outside(cue)
            .orElseGet(
                () -> winner.id() + " has " + String.join(" or ", Votes.expected(cue, winner))),
        Figures.number(cue.reliability(), 2));
  }

  private String unused(Cue cue, Understood means) {
    CueAnswer given = answered.given().get(cue);
    return String.format(
        "'%s' was read as %s and counts for nothing: %s.",
        cue.id(), given == null ? "" : given.read(), means.doubt());
  }
}
