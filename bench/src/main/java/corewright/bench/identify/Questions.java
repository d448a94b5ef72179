package corewright.bench.identify;

import corewright.profiles.Cue;
import corewright.profiles.Variant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Which question is worth most: the expected drop in uncertainty about what is to be done with the
 * unit, for each second of work.
 */
final class Questions {
  /** Bits of expected gain below which a question would change nothing. */
  private static final double NOTHING = 0.005;

  /**
   * What any question costs besides its own time, s: walking up, a photograph, the entry, and the
   * patience of whoever is asked. Without it many weak questions would come before one that tells.
   */
  private static final double SETUP_s = 500;

  /**
   * Knowing the very build counts for little beside knowing what to do with it, but not nothing.
   */
  private static final double BUILD_WEIGHT = 0.2;

  private final Key key;
  private final Map<Cue, String> seen;

  Questions(Key key, Map<Cue, String> seen) {
    this.key = key;
    this.seen = seen;
  }

  /**
   * One open question.
   *
   * @param gain_bits expected drop of the uncertainty
   */
  record Worth(Cue cue, double gain_bits) {
    double perSecond() {
      return gain_bits / (SETUP_s + cue.cost_s());
    }
  }

  /** Every open question that could change something, the best first. */
  List<Worth> ranked() {
    Map<Variant, Double> now = key.posterior(seen);
    double doubt = doubt(now);
    return key.cues().stream()
        .filter(c -> !seen.containsKey(c))
        .map(c -> new Worth(c, doubt - expectedDoubt(c, now)))
        .filter(w -> w.gain_bits() > NOTHING)
        .sorted(Comparator.comparingDouble(Worth::perSecond).reversed())
        .toList();
  }

  private double expectedDoubt(Cue cue, Map<Variant, Double> now) {
    double expected = 0;
    double total = 0;
    for (String answer : cue.answers()) {
      double chance =
          now.entrySet().stream()
              .mapToDouble(e -> e.getValue() * Votes.of(cue, answer, e.getKey()))
              .sum();
      Map<Cue, String> then = new LinkedHashMap<>(seen);
      then.put(cue, answer);
      expected += chance * doubt(key.posterior(then));
      total += chance; // the floor makes the answers add up to a little more than 1
    }
    return expected / total;
  }

  private static double doubt(Map<Variant, Double> posterior) {
    return entropy(posterior, Fate::of) + BUILD_WEIGHT * entropy(posterior, v -> v);
  }

  /** Entropy in bits of the posterior, summed over variants of one class. */
  private static double entropy(Map<Variant, Double> posterior, Function<Variant, Object> classOf) {
    Map<Object, Double> shares = new LinkedHashMap<>();
    posterior.forEach((v, p) -> shares.merge(classOf.apply(v), p, Double::sum));
    return shares.values().stream()
        .mapToDouble(p -> p > 0 ? -p * Math.log(p) / Math.log(2) : 0)
        .sum();
  }
}
