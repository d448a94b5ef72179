package corewright.profiles;

import corewright.measures.Quantity;

/**
 * What one quantity is held against, in the quantity's own unit.
 *
 * @param id stable, as {@code output-full}
 * @param quantity what is held
 * @param side whether the reading must be at least or at most the limit
 * @param pass beyond this (in the good direction, the limit itself included) the finding passes
 * @param fail beyond this (in the bad direction) it fails; between the two lies the declared
 *     marginal band; equal to {@code pass} where there is none
 * @param from_A the limit applies to holds whose measured load is at least this, A
 * @param to_A and at most this, A
 * @param headline the reading that the one sentence and the picture speak of; one a profile
 * @param why where the number comes from, one clause
 */
public record Limit(
    String id,
    Quantity quantity,
    Side side,
    double pass,
    double fail,
    double from_A,
    double to_A,
    boolean headline,
    String why) {

  /** Which side of the limit is good. */
  public enum Side {
    AT_LEAST,
    AT_MOST
  }

  /** Whether the limit applies to a hold with this measured load. */
  public boolean appliesTo(double load_A) {
    return load_A >= from_A && load_A <= to_A;
  }
}
