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
        .filter(c -> c.travelsWith() == TravelsWith.BENCH)
        .filter(this::fitsNoVariant)
        .findFirst();
  }

  boolean amongReliable() {
    return cues().anyMatch(c -> c.reliability() >= HIGH);
  }

  /**
   * The variant that the label speaks for, where it is not the winner, something else would be done
   * with it, and nothing that travels with the board has settled it.
   */
  Optional<Variant> swappedLabel() {
    boolean settled =
        seen.entrySet().stream()
            .filter(
                e ->
                    e.getKey().travelsWith() == TravelsWith.BOARD
                        || e.getKey().travelsWith() == TravelsWith.BENCH)
            .anyMatch(e -> Votes.expected(e.getKey(), winner).contains(e.getValue()));
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
