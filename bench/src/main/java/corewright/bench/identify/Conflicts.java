package corewright.bench.identify;

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
  private final Map<Cue, String> seen;
  private final Variant winner;

  Conflicts(Key key, Map<Cue, String> seen, Variant winner) {
    this.key = key;
    this.seen = seen;
    this.winner = winner;
  }

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
    cues().map(this::sentence).forEach(sentences::add);
    return List.copyOf(sentences);
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
    return String.format(
        "'%s' was read as %s, %s has %s (reliability %s).",
        cue.id(),
        seen.get(cue),
        winner.id(),
        String.join(" or ", Votes.expected(cue, winner)),
        Figures.number(cue.reliability(), 2));
  }
}
