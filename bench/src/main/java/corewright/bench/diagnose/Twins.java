package corewright.bench.diagnose;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Groups that only one trait tells apart. Where that was not read they are one: saying either would
 * be a guess. The wider of the two is named; its next measurement is the missing one.
 */
final class Twins {
  private record Pair(Group wider, Group narrower, List<Trait> told) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair(
              Group.POWER_STAGE_WEAK, Group.POWER_STAGE_LOSSY, List.of(Trait.LOSS, Trait.IDLE)),
          new Pair(Group.POWER_STAGE_WEAK, Group.DEAD_PHASE, List.of(Trait.FREQUENCY)),
          new Pair(Group.OUTPUT_CAPACITANCE, Group.OUTPUT_ESR, List.of(Trait.RIPPLE)));

  private Twins() {}

  /** The probabilities, with what cannot be told apart taken together. */
  static Map<Group, Double> together(List<Seen> seen, Map<Group, Double> posterior) {
    Map<Group, Double> joined = new EnumMap<>(posterior);
    if (seen.stream().anyMatch(s -> s.sign() == Sign.POWER_UP_REFUSED)) {
      return joined; // what stopped it tells them apart, or is neither
    }
    for (Pair pair : PAIRS) {
      if (seen.stream().noneMatch(s -> pair.told().contains(s.sign().trait()))) {
        joined.merge(pair.wider(), joined.getOrDefault(pair.narrower(), 0.0), Double::sum);
        joined.put(pair.narrower(), 0.0);
      }
    }
    return joined;
  }
}
