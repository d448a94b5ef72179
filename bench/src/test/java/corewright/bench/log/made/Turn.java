package corewright.bench.log.made;

import java.util.function.DoubleUnaryOperator;

/**
 * One turn of the starter.
 *
 * @param plateau_V what the supply stays at, V; compression ripples it by {@link #RIPPLE_V}
 * @param output what the output does, V, by seconds from the beginning of the turn
 * @param starts whether the engine runs afterwards
 */
public record Turn(
    double at_s, double length_s, double plateau_V, DoubleUnaryOperator output, boolean starts) {
  public static final double RIPPLE_V = 0.15;
  static final double INRUSH_S = 0.15;

  double end_s() {
    return at_s + length_s;
  }
}
