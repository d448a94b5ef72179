package corewright.bench.commission;

import corewright.measures.Measurement;
import corewright.measures.Unit;

/**
 * The resistor in the place of a unit, from supply + to output +, minus straight through; and what
 * goes through it. Half of the voltage falls across it, so that both sides can be told apart.
 *
 * @param resistance what it is known to be, Ω
 * @param supply_V set at the source
 * @param load_A set at the load
 */
public record Plug(Measurement resistance, double supply_V, double load_A) {
  /** Low enough to touch (EN 50191 counts 60 V DC as harmless), high enough for any divider. */
  public static final double SUPPLY_V = 10;

  private static final double LEAST_OHM = 2;
  private static final double MOST_OHM = 50;

  private static final double MOST_LINK_OHM = 0.02;
  private static final double MOST_LINK_A = 20;

  /** Enough for an electronic load to draw from. */
  private static final double LINK_V = 5;

  /** The source gives no more than this times what is asked for. */
  private static final double LIMIT = 1.2;

  private static final double PROTECTION = 1.5;

  /**
   * A resistor with the levels that suit it.
   *
   * @throws IllegalArgumentException if too much would flow, or too little to be told
   */
  public static Plug of(Measurement resistance) {
    double ohm = resistance.value();
    if (resistance.unit() != Unit.OHM || !(ohm >= LEAST_OHM && ohm <= MOST_OHM)) {
      throw new IllegalArgumentException(
          "a resistor between 2 Ω and 50 Ω is needed, not one of " + resistance);
    }
    return new Plug(resistance, SUPPLY_V, SUPPLY_V / 2 / ohm);
  }

  /**
   * A link in the place of a unit, a thick wire, to measure the contacts with: only what they add
   * is between the two sides then.
   *
   * @param ampere what the load shall draw
   * @throws IllegalArgumentException if it is no link, or too much or too little would flow
   */
  public static Plug link(Measurement resistance, double ampere) {
    if (resistance.unit() != Unit.OHM || !(Math.abs(resistance.value()) <= MOST_LINK_OHM)) {
      throw new IllegalArgumentException("a link of no more than 20 mΩ is needed");
    }
    if (!(ampere >= 0.5 && ampere <= MOST_LINK_A)) {
      throw new IllegalArgumentException("between 0.5 A and 20 A are sent through the contacts");
    }
    return new Plug(resistance, LINK_V, ampere);
  }

  /** What it turns into heat while the load draws, W. */
  public double usual_W() {
    return load_A * load_A * resistance.value();
  }

  /** What it must bear if the load should fail short, W: the source's limit holds it there. */
  public double most_W() {
    return limit_A() * limit_A() * resistance.value();
  }

  double limit_A() {
    return LIMIT * load_A;
  }

  double over_V() {
    return LIMIT * supply_V;
  }

  double over_A() {
    return PROTECTION * load_A;
  }
}
