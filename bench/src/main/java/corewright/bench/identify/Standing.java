package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How far the answers so far have come. */
final class Standing {
  private static final double IDENTIFIED = 0.95;
  private static final double PROBABLE = 0.80;

  /**
   * Asking goes on a little beyond {@link #IDENTIFIED}: of those at 0.95 one in twenty is wrong.
   * From here on an open conflict is settled by the one look that can, not by more votes.
   */
  private static final double ENOUGH = 0.992;

  /** A variant less probable than this no longer keeps a question open. */
  private static final double REMOTE = 0.008;

  private final Key key;
  private final List<String> asked;
  private final Answered answered;
  private final Map<Cue, String> seen;
  private final Map<Variant, Double> posterior;
  private final Variant winner;
  private final Conflicts conflicts;
  private final History history;

  Standing(Family family, List<CueAnswer> answers, Map<String, Double> priors) {
    answered = Answered.of(family, answers);
    key = new Key(family, priors, answered.cues());
    asked = answers.stream().map(CueAnswer::cue).toList();
    seen = answered.seen();
    posterior = key.posterior(seen);
    winner = posterior.keySet().iterator().next();
    Dates dates = new Dates(answered, winner);
    conflicts = new Conflicts(key, answered, winner, dates);
    history = new History(answered, conflicts, dates);
  }

  Identification identification() {
    Optional<Variant> second = posterior.keySet().stream().skip(1).findFirst();
    Map<String, Double> byId = new LinkedHashMap<>();
    posterior.forEach((v, p) -> byId.put(v.id(), p));
    return new Identification(
        key.family().id(),
        key.family().revision(),
        winner.id(),
        probability(winner),
        band(),
        second.map(Variant::id).orElse(""),
        second.map(this::probability).orElse(0.0),
        byId,
        conflicts.sentences(),
        next().map(Cue::question).orElse(""),
        history.hypotheses());
  }

  /** What each answer to a cue would make of it; those that no build gives left out. */
  List<Consequence> consequences(Cue cue) {
    List<Consequence> all = new ArrayList<>();
    double total = 0;
    for (String answer : cue.answers()) {
      double chance =
          posterior.entrySet().stream()
              .mapToDouble(e -> e.getValue() * Votes.of(cue, answer, e.getKey()))
              .sum();
      Map<Cue, String> then = new LinkedHashMap<>(seen);
      then.put(cue, answer);
      Map.Entry<Variant, Double> first = key.posterior(then).entrySet().iterator().next();
      all.add(
          new Consequence(
              answer, chance, first.getKey().id(), first.getValue(), first.getKey().serviceable()));
      total += chance;
    }
    double sum = total;
    return all.stream().map(c -> c.outOf(sum)).toList();
  }

  /** The cue to look at next; empty when no answer would change what is done with the unit. */
  Optional<Cue> next() {
    if (conflicts.veto().isPresent()) {
      return Optional.empty();
    }
    if (probability(winner) >= ENOUGH) {
      return conflicts.open() ? settling() : Optional.empty();
    }
    boolean alike = fates(REMOTE) == 1 && probability(winner) >= PROBABLE;
    return alike && !conflicts.open()
        ? Optional.empty()
        : new Questions(key, seen)
            .ranked().stream().map(Questions.Worth::cue).filter(this::notAsked).findFirst();
  }

  private Band band() {
    if (probability(winner) < PROBABLE || conflicts.veto().isPresent()) {
      return Band.UNCERTAIN;
    }
    return probability(winner) < IDENTIFIED || conflicts.open() ? Band.PROBABLE : Band.IDENTIFIED;
  }

  /** Once the build is sure and only a conflict is open: the cheapest look that can settle it. */
  private Optional<Cue> settling() {
    return key.cues().stream()
        .filter(this::notAsked)
        .filter(conflicts::couldSettle)
        .min(Comparator.comparingDouble(Cue::cost_s));
  }

  private long fates(double least) {
    return posterior.entrySet().stream()
        .filter(e -> e.getValue() >= least)
        .map(e -> Fate.of(e.getKey()))
        .distinct()
        .count();
  }

  private boolean notAsked(Cue cue) {
    return !asked.contains(cue.id());
  }

  private double probability(Variant variant) {
    return posterior.getOrDefault(variant, 0.0);
  }
}
