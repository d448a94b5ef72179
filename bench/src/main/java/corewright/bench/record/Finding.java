package corewright.bench.record;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;
import java.util.Optional;

/**
 * One reading held against one limit.
 *
 * @param hold index of the hold, −1 for a quantity of the whole run
 * @param measurement what was read; empty where it was not measured
 * @param outcome what the comparison came to, after the decision rule
 * @param margin distance to the pass limit, positive on the good side, in the quantity's unit;
 *     empty where nothing was measured
 * @param conformity probability that the true value is on the good side of {@code limit.pass} (JCGM
 *     106, 6), 0 to 1; empty where nothing was measured
 * @param note why it was not measured, or what to know about it; often empty
 */
public record Finding(
    Limit limit,
    int hold,
    Optional<Measurement> measurement,
    Outcome outcome,
    Optional<Double> margin,
    Optional<Double> conformity,
    String note) {

  public Quantity quantity() {
    return limit.quantity();
  }

  /** What one comparison came to. */
  public enum Outcome {
    PASS,
    MARGINAL,
    FAIL,
    NOT_MEASURED
  }
}
