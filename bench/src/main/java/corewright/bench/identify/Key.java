package corewright.bench.identify;

import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An identification key: the variants of a family with how common each is, and the cues that tell
 * them apart.
 */
final class Key {
  private final Family family;
  private final List<Cue> cues;
  private final Map<Variant, Double> priors;

  Key(Family family, Map<String, Double> priors) {
    this(family, priors, family.cues());
  }

  /**
   * @param priors share of each variant among the shop's own cores, by id; the family's own where
   *     one is missing
   * @param cues the family's, each as reliable as it is on this unit
   */
  Key(Family family, Map<String, Double> priors, List<Cue> cues) {
    if (family.variants().isEmpty()) {
      throw new IllegalArgumentException(
          "family " + family.id() + " has no variants: nothing can be told apart");
    }
    this.family = family;
    this.cues = List.copyOf(cues);
    Map<Variant, Double> shares = new LinkedHashMap<>();
    for (Variant variant : family.variants()) {
      shares.put(variant, Math.max(0, priors.getOrDefault(variant.id(), variant.prior())));
    }
    boolean nothingKnown = shares.values().stream().allMatch(p -> p == 0);
    shares.replaceAll((v, p) -> nothingKnown ? 1 : Math.max(p, 1e-6));
    this.priors = shares;
  }

  Family family() {
    return family;
  }

  List<Variant> variants() {
    return family.variants();
  }

  List<Cue> cues() {
    return cues;
  }

  /** Probability of each variant given what was seen, most probable first. */
  Map<Variant, Double> posterior(Map<Cue, String> seen) {
    Map<Variant, Double> weight = Votes.of(variants(), seen);
    weight.replaceAll((v, vote) -> vote * priors.getOrDefault(v, 0.0));
    double sum = weight.values().stream().mapToDouble(Double::doubleValue).sum();
    Map<Variant, Double> posterior = new LinkedHashMap<>();
    weight.entrySet().stream()
        .sorted(Map.Entry.<Variant, Double>comparingByValue().reversed())
        .forEach(e -> posterior.put(e.getKey(), e.getValue() / sum));
    return posterior;
  }
}
