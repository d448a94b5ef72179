package corewright.bench.diagnose;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How often each group of faults shows each sign: the signatures that rebuilders go by (common
 * practice, no source), which count as a few units, and beside them what was counted on emulated
 * units ({@link SignatureTable}).
 */
final class Signatures {
  /** The trade's signature counts as so many units. */
  private static final double TRADE_COUNTS_AS = 3;

  /**
   * Share of units that show the healthy sign of a trait that their fault has nothing to do with.
   */
  private static final double HEALTHY = 0.97;

  /** No sign rules a group out by itself. */
  private static final double FLOOR = 0.003;

  private static final String TRADE =
      """
      OUTPUT_CAPACITANCE STEP_FROM_REST_DEEP=0.90 STEP_UNDER_LOAD_DEEP=0.85
      OUTPUT_ESR RIPPLE_HIGH=0.65 RIPPLE_RAISED=0.30
      JOINT SHAPE_JUMPS=0.90 SAG_EARLY=0.45 SAG_LATE=0.10 STEP_UNDER_LOAD_DEEP=0.60 DRIFT_FALLING=0.30
      POWER_STAGE_WEAK SAG_EARLY=0.50 SAG_LATE=0.30 SAG_LOW_LINE=0.20 DRIFT_FALLING=0.60
      DEAD_PHASE SAG_EARLY=0.90 FREQUENCY_HALF=0.95
      POWER_STAGE_LOSSY SAG_LATE=0.40 SAG_LOW_LINE=0.30 LOSS_HIGH=0.70 LOSS_RAISED=0.25 IDLE_RAISED=0.30 DRIFT_FALLING=0.50 POWER_UP_REFUSED=0.40 BEHIND_LIMIT_BOOSTS=0.40
      NOT_SWITCHING REST_THROUGH=0.95
      NO_PATH REST_ABSENT=0.95
      INPUT_SHORT POWER_UP_REFUSED=0.95 DEAD_INPUT_SHORT=0.95 BEHIND_LIMIT_INPUT_DOWN=0.85 BEHIND_LIMIT_OUTPUT_DOWN=0.10
      OUTPUT_SHORT POWER_UP_REFUSED=0.95 DEAD_OUTPUT_SHORT=0.90 DEAD_OUTPUT_LEAKS=0.05 BEHIND_LIMIT_OUTPUT_DOWN=0.85 BEHIND_LIMIT_INPUT_DOWN=0.05 BEHIND_LIMIT_THROUGH=0.05
      LOCK_OUT SAG_LOW_LINE=0.90 LINE_LOST_AT_REST=0.40 LINE_LOST_LOADED=0.40 AFTER_LOWER=0.60 REST_THROUGH=0.10
      INPUT_SIDE SAG_LOW_LINE=0.60 SAG_LATE=0.25 LOSS_HIGH=0.45 LOSS_RAISED=0.35 STEP_UNDER_LOAD_DEEP=0.30
      FEEDBACK REST_LOW=0.48 REST_HIGH=0.48
      WARM_REFERENCE AFTER_LOWER=0.90 DRIFT_FALLING=0.80 SAG_EARLY=0.40 SAG_LATE=0.20 SHAPE_SLIDES=0.30
      OUTPUT_LEAKAGE IDLE_HIGH=0.80 IDLE_RAISED=0.15 SAG_LOW_LINE=0.40 SAG_LATE=0.20 POWER_UP_REFUSED=0.60 DEAD_OUTPUT_LEAKS=0.75 BEHIND_LIMIT_BOOSTS=0.15 BEHIND_LIMIT_THROUGH=0.05
      RESTART SHAPE_CYCLES=0.90 SAG_EARLY=0.60 SAG_LATE=0.15 SAG_LOW_LINE=0.15 LINE_LOST_LOADED=0.20
      LOOP SHAPE_SWINGS=0.40 RINGING_MUCH=0.50 SUBHARMONIC_MUCH=0.45 STEP_UNDER_LOAD_DEEP=0.50 STEP_FROM_REST_DEEP=0.35
      """;

  private static final Map<Group, Map<Sign, Double>> OF_GROUP = shares();

  private Signatures() {}

  /** Probability that a unit of this group shows this sign of a trait that can be read. */
  static double of(Group group, Sign sign) {
    return OF_GROUP.getOrDefault(group, Map.of()).getOrDefault(sign, FLOOR);
  }

  private static Map<Group, Map<Sign, Double>> shares() {
    Map<Group, Map<Sign, Double>> trade = parse(TRADE);
    Map<Group, Map<Sign, Double>> counted = parse(SignatureTable.TEXT);
    Map<Group, Map<Sign, Double>> shares = new EnumMap<>(Group.class);
    for (Group group : Group.values()) {
      Map<Sign, Double> all = new EnumMap<>(Sign.class);
      for (Trait trait : Trait.values()) {
        all.putAll(
            of(trait, trade.getOrDefault(group, Map.of()), counted.getOrDefault(group, Map.of())));
      }
      shares.put(group, all);
    }
    return shares;
  }

  /** Shares of the signs of one trait; they add up to 1 but for the floor. */
  private static Map<Sign, Double> of(
      Trait trait, Map<Sign, Double> trade, Map<Sign, Double> counted) {
    List<Sign> signs = Arrays.stream(Sign.values()).filter(s -> s.trait() == trait).toList();
    double named = signs.stream().mapToDouble(s -> trade.getOrDefault(s, 0.0)).sum();
    double units = signs.stream().mapToDouble(s -> counted.getOrDefault(s, 0.0)).sum();
    long others = signs.stream().filter(s -> !s.healthy()).count();
    Map<Sign, Double> shares = new EnumMap<>(Sign.class);
    for (Sign sign : signs) {
      double healthy = named > 0 ? 1 - named : HEALTHY;
      double other = named > 0 ? 0 : (1 - HEALTHY) / others;
      double expected = trade.getOrDefault(sign, sign.healthy() ? healthy : other);
      double share =
          (counted.getOrDefault(sign, 0.0) + TRADE_COUNTS_AS * expected)
              / (units + TRADE_COUNTS_AS);
      shares.put(sign, Math.max(FLOOR, share));
    }
    return shares;
  }

  private static Map<Group, Map<Sign, Double>> parse(String table) {
    Map<Group, Map<Sign, Double>> parsed = new EnumMap<>(Group.class);
    for (String line : table.split("\n", -1)) {
      String[] words = line.strip().split(" +", -1);
      if (words.length > 1) {
        Map<Sign, Double> signs = new EnumMap<>(Sign.class);
        for (int i = 1; i < words.length; i++) {
          String[] sign = words[i].split("=", -1);
          signs.put(Sign.valueOf(sign[0]), Double.parseDouble(sign[1]));
        }
        parsed.put(Group.valueOf(words[0]), signs);
      }
    }
    return parsed;
  }
}
