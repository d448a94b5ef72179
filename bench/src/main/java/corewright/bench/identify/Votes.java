package corewright.bench.identify;

import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.Variant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How well answers agree with each variant. A cue that was not answered gives no factor: missing is
 * not no.
 */
final class Votes {
  /** No single cue makes a variant less likely than this: one wrong cue cannot kill the truth. */
  static final double FLOOR = 0.02;

  private Votes() {}

  /** Probability of reading {@code answer} on a unit of this variant; floored. */
  static double of(Cue cue, String answer, Variant variant) {
    int possible = cue.answers().size();
    List<String> expected = expected(cue, variant);
    if (expected.isEmpty() || expected.size() >= possible) {
      return 1.0 / possible; // this build says nothing about the cue
    }
    double probability =
        expected.contains(answer)
            ? cue.reliability() / expected.size()
            : (1 - cue.reliability()) / (possible - expected.size());
    return Math.max(FLOOR, probability);
  }

  /**
   * Factor for each variant from all answers. Everything on the label counts as one vote, no
   * stronger than its most reliable cue: otherwise a swapped label outvotes the unit.
   *
   * @param seen answers by cue
   */
  static Map<Variant, Double> of(List<Variant> variants, Map<Cue, String> seen) {
    Map<Variant, Double> rest = product(variants, seen, false);
    Map<Variant, Double> label = label(variants, seen);
    Map<Variant, Double> all = new LinkedHashMap<>();
    variants.forEach(v -> all.put(v, value(rest, v) * value(label, v)));
    return all;
  }

  /** The capped vote of the label, 1 for the variant that it agrees with best. */
  static Map<Variant, Double> label(List<Variant> variants, Map<Cue, String> seen) {
    double reliability =
        seen.keySet().stream()
            .filter(c -> c.travelsWith() == TravelsWith.LABEL)
            .mapToDouble(Cue::reliability)
            .max()
            .orElse(0.5);
    double least = Math.min(1, (1 - reliability) / reliability);
    Map<Variant, Double> product = product(variants, seen, true);
    double best = product.values().stream().mapToDouble(Double::doubleValue).max().orElse(1);
    Map<Variant, Double> capped = new LinkedHashMap<>();
    product.forEach((v, p) -> capped.put(v, Math.max(Math.max(least, FLOOR), p / best)));
    return capped;
  }

  /** The answers that agree with a variant; empty if the key says nothing of the cue. */
  static List<String> expected(Cue cue, Variant variant) {
    return variant.expected().getOrDefault(cue.id(), List.of());
  }

  private static Map<Variant, Double> product(
      List<Variant> variants, Map<Cue, String> seen, boolean ofLabel) {
    Map<Variant, Double> product = new LinkedHashMap<>();
    for (Variant variant : variants) {
      double p = 1;
      for (Map.Entry<Cue, String> entry : seen.entrySet()) {
        if ((entry.getKey().travelsWith() == TravelsWith.LABEL) == ofLabel) {
          p *= of(entry.getKey(), entry.getValue(), variant);
        }
      }
      product.put(variant, p);
    }
    return product;
  }

  private static double value(Map<Variant, Double> map, Variant variant) {
    return map.getOrDefault(variant, 1.0);
  }
}
