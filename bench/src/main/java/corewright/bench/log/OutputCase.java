package corewright.bench.log;

import corewright.bench.record.Qualifier;
import corewright.measures.Measurement;
import java.util.Optional;

/**
 * All that the rules ask about one output in one crank.
 *
 * @param crank where it lies
 * @param length_s of the crank as its sign shows it, s
 * @param samples in the judged window, held values taken out
 * @param held rows that the tool repeats a value for; 1 if it does not
 * @param quantum_V smallest step of the channel, V; NaN if it never moves
 * @param still whether it did not move at all before, in and after the crank
 * @param clipped whether it keeps to a round number far above nominal
 * @param silent share of the window in long silences of output or supply, 0 to 1
 * @param worst the worst supply; empty where none is known
 * @param running what the output did once the engine ran; empty where that was not logged long
 *     enough
 */
record OutputCase(
    Bounds crank,
    double length_s,
    Series samples,
    int held,
    double quantum_V,
    boolean still,
    boolean clipped,
    double silent,
    Optional<Supply> worst,
    Crank.Load load,
    Optional<Running> running,
    Drift drift,
    LogRule rule,
    LogFamily family) {

  /**
   * The output after the engine has started.
   *
   * @param lowestQuarter_V of the output, V
   * @param supply_V lowest of the supply that is no accident, V
   */
  record Running(double lowestQuarter_V, double supply_V) {}

  Optional<Qualifier> qualifier() {
    return worst.flatMap(Supply::qualifier);
  }

  double middle_V() {
    return Stats.median(samples.sorted());
  }

  double low_V() {
    return Stats.lowestQuarter(samples.sorted());
  }

  /**
   * The lowest quarter of the samples as a reading: the same in every sentence, table and picture.
   * Its scatter is that of a mean of so many samples.
   */
  Measurement lowestQuarter() {
    int quarter = Math.max(1, samples.size() / 4);
    return Readings.single(low_V(), scatter_V() / Math.sqrt(quarter), quantum_V);
  }

  double scatter_V() {
    return Stats.scatter(samples);
  }

  boolean falls() {
    boolean surely = drift.high_V_s() < rule.falling_V_s();
    return low_V() < rule.low_V() || (surely && middle_V() < rule.good_V());
  }

  boolean holds() {
    return low_V() >= rule.good_V()
        && drift.low_V_s() >= -rule.steady_V_s()
        && drift.high_V_s() <= rule.steady_V_s();
  }

  boolean longEnough() {
    return samples.size() >= LogRule.GOOD_SAMPLES && samples.span_s() >= LogRule.GOOD_SPAN_S;
  }

  /** Dips of the output that slow samples hit at random; the smallest step sets the floor. */
  boolean scatters() {
    double steps = Double.isNaN(quantum_V) ? 0 : 3 * quantum_V;
    return scatter_V() > Math.max(rule.scatter_V(), steps) && middle_V() >= rule.good_V();
  }
}
