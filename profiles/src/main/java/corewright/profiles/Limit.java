package corewright.profiles;

import corewright.measures.Quantity;
import java.util.Optional;

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
 * @param fromHold_s holds shorter than this are not held against it, s: a drift needs its time. A
 *     run without a longer hold has no such finding
 * @param edge for what follows a load step: from which steps it is asked; empty: from every hold
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
    double fromHold_s,
    Optional<Edge> edge,
    boolean headline,
    String why) {

  /** A limit for every hold in a range of load. */
  public Limit(
      String id,
      Quantity quantity,
      Side side,
      double pass,
      double fail,
      double from_A,
      double to_A,
      boolean headline,
      String why) {
    this(id, quantity, side, pass, fail, from_A, to_A, 0, Optional.empty(), headline, why);
  }

  /** Which side of the limit is good. */
  public enum Side {
    AT_LEAST,
    AT_MOST
  }

  /**
   * The load steps that a limit is asked of: those that raise the load from a range of levels. What
   * a step does grows with it, so {@code pass} and {@code fail} are for each ampere of the step.
   *
   * @param from_A lowest load before the step, A
   * @param to_A highest load before the step, A
   * @param least_A smaller steps are not asked, A
   */
  public record Edge(double from_A, double to_A, double least_A) {

    boolean takes(double before_A, double after_A) {
      return before_A >= from_A && before_A <= to_A && after_A - before_A >= least_A;
    }
  }

  /** Whether the limit applies to a hold with this measured load. */
  public boolean appliesTo(double load_A) {
    return load_A >= from_A && load_A <= to_A;
  }

  /**
   * What the limit comes to for one hold; empty where it does not apply.
   *
   * @param before_A measured load of the hold before it; empty for the first
   * @param load_A its measured load
   * @param hold_s how long it is
   */
  public Optional<Limit> at(Optional<Double> before_A, double load_A, double hold_s) {
    if (!appliesTo(load_A) || hold_s < fromHold_s) {
      return Optional.empty();
    }
    if (edge.isEmpty()) {
      return Optional.of(this);
    }
    Edge asked = edge.get();
    return before_A
        .filter(before -> asked.takes(before, load_A))
        .map(before -> perStep(load_A - before));
  }

  private Limit perStep(double step_A) {
    return new Limit(
        id,
        quantity,
        side,
        pass * step_A,
        fail * step_A,
        from_A,
        to_A,
        fromHold_s,
        edge,
        headline,
        why);
  }
}
