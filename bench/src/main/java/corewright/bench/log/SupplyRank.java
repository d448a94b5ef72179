package corewright.bench.log;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which of several supplies decides: the worst of them, since a module is fed through all of them.
 * What a dongle or a charging system says of itself does not count against a supply that was
 * measured at the engine's computer or nearer.
 */
final class SupplyRank {
  /** Of {@link Supply#nearness}: the engine's computer, or the module itself. */
  private static final int NEAR = 2;

  private SupplyRank() {}

  /** The supply that qualifies the crank; empty where nothing is known of any. */
  static Optional<Supply> counting(List<Supply> supplies) {
    List<Supply> known = supplies.stream().filter(s -> s.qualifier().isPresent()).toList();
    boolean near = known.stream().anyMatch(s -> s.nearness() >= NEAR);
    return known.stream()
        .filter(s -> !near || s.nearness() > 0)
        .max(Comparator.comparing(s -> s.qualifier().orElseThrow()));
  }

  /** Why the supplies, taken together, could mislead; empty where they agree. */
  static Optional<String> doubt(List<Supply> supplies) {
    List<Supply> known = supplies.stream().filter(s -> s.qualifier().isPresent()).toList();
    if (known.stream().map(s -> s.qualifier().orElseThrow()).distinct().count() < 2) {
      return Optional.empty();
    }
    Supply taken = counting(supplies).orElseThrow();
    boolean worse =
        known.stream()
            .anyMatch(s -> s.qualifier().orElseThrow().compareTo(taken.qualifier().get()) > 0);
    return Optional.of(
        worse
            ? "The supplies do not agree; the one nearer to the module was taken, and what is"
                + " measured far from it lay lower."
            : "The supplies do not agree; the worst of them was taken.");
  }
}
