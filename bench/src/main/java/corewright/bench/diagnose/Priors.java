package corewright.bench.diagnose;

import java.util.EnumMap;
import java.util.Map;

/**
 * How often each group is at fault among the units that fail, before anything was measured.
 *
 * @param shares by group; each above 0, together 1
 */
public record Priors(Map<Group, Double> shares) {
  /** The trade's shares count as so many teardowns: a shop's own hundred outweigh them. */
  private static final double TRADE_COUNTS_AS = 20;

  public Priors {
    shares = Map.copyOf(shares);
    if (shares.size() != Group.values().length) {
      throw new IllegalArgumentException("every group needs its share, also a rare one");
    }
  }

  /** The trade's own, until a shop has opened units of its own. */
  public static Priors ofTrade() {
    return ofTeardowns(Map.of());
  }

  /**
   * The shop's own results beside the trade's.
   *
   * @param confirmed by group, how many units it was found in on opening
   */
  public static Priors ofTeardowns(Map<Group, Integer> confirmed) {
    double all = TRADE_COUNTS_AS;
    double trade = 0;
    for (Group group : Group.values()) {
      all += confirmed.getOrDefault(group, 0);
      trade += group.share();
    }
    Map<Group, Double> shares = new EnumMap<>(Group.class);
    for (Group group : Group.values()) {
      double counted = confirmed.getOrDefault(group, 0) + TRADE_COUNTS_AS * group.share() / trade;
      shares.put(group, counted / all);
    }
    return new Priors(shares);
  }

  double of(Group group) {
    return shares.getOrDefault(group, 0.0);
  }
}
