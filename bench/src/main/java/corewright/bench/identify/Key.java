package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An identification key: the variants of a family with how common each is, and the cues that tell
 * them apart.
 */
final class Key {
  private final Family family;
  private final Map<Variant, Double> priors;

  /**
   * @param priors share of each variant among the shop's own cores, by id; the family's own where
   *     one is missing
   */
  Key(Family family, Map<String, Double> priors) {
    if (family.variants().isEmpty()) {
      throw new IllegalArgumentException(
          "family " + family.id() + " has no variants: nothing can be told apart");
    }
    this.family = family;
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
    return family.cues();
  }

  /**
   * The answers that are cues of this key, the latest of each, without those not seen.
   *
   * @throws IllegalArgumentException if an answer is none of its cue's
   */
  Map<Cue, String> seen(List<CueAnswer> answers) {
    Map<Cue, String> seen = new LinkedHashMap<>();
    List<CueAnswer> inOrder = new ArrayList<>(answers);
    inOrder.sort(Comparator.comparing(CueAnswer::when)); // stable: of two at once the later listed
    for (CueAnswer answer : inOrder) {
      Optional<Cue> cue = cues().stream().filter(c -> c.id().equals(answer.cue())).findFirst();
      if (cue.isEmpty()) {
        continue; // a line of the checklist
      }
      if (answer.answer().equals(Identifier.NOT_SEEN)) {
        seen.remove(cue.get());
        continue;
      }
      if (!cue.get().answers().contains(answer.answer())) {
        throw new IllegalArgumentException(
            String.format(
                "'%s' is no answer to cue '%s' of family %s. Use one of %s, or '%s'.",
                answer.answer(),
                answer.cue(),
                family.id(),
                String.join(", ", cue.get().answers()),
                Identifier.NOT_SEEN));
      }
      seen.put(cue.get(), answer.answer());
    }
    return seen;
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
