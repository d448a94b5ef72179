package corewright.bench.log;

import corewright.bench.log.table.Column;
import corewright.bench.record.Qualifier;
import corewright.measures.Measurement;
import java.util.Optional;

/** Qualifies one supply in one crank. */
final class SupplyJudge {
  /** Fewer samples than this may agree by chance. */
  private static final int MANY = 8;

  private static final double REST_S = 5;

  private final LogFamily family;
  private final Column column;
  private final Series all;
  private final double quantum_V;
  private final Bounds bounds;
  private final Series outputs;

  /** How far apart two channels of one row may really be: one poll, s. */
  private final double skew_s;

  private final boolean bySpeed;

  /**
   * Prepares one.
   *
   * @param all samples about the crank
   * @param outputs samples of the output about the crank, empty where there are none
   * @param bySpeed whether the engine speed shows that the starter really turned
   */
  SupplyJudge(
      LogFamily family,
      Column column,
      Series all,
      double quantum_V,
      Bounds bounds,
      Series outputs,
      boolean bySpeed) {
    this.family = family;
    this.column = column;
    this.all = all;
    this.quantum_V = quantum_V;
    this.bounds = bounds;
    this.outputs = outputs;
    this.skew_s = all.medianStep_s();
    this.bySpeed = bySpeed;
  }

  Supply judge() {
    Series before = all.within(bounds.start_s() - REST_S, bounds.start_s() - 1e-9);
    Series crank = all.within(bounds.start_s(), bounds.end_s());
    Series judged =
        bounds.judged().map(w -> all.within(w.start_s(), w.end_s())).orElse(crank.within(1, 0));
    Optional<Measurement> rest = Readings.median(before, quantum_V);
    Optional<Measurement> minimum = minimum(judged);
    boolean stuck = bySpeed && !before.isEmpty() && all.constant() && crank.size() > 2;
    boolean other =
        family.input_V() > LogFamily.TWO_BATTERIES_V
            && rest.filter(r -> r.value() < LogFamily.TWO_BATTERIES_V).isPresent();
    Zones zones = Zones.of(family, rest);
    Optional<Qualifier> alone =
        stuck || other ? Optional.empty() : minimum.map(m -> zones.qualifier(m.value()));
    Optional<Qualifier> paired = pairedLowest(judged).map(zones::qualifier);
    boolean worse =
        alone.isPresent() && paired.isPresent() && paired.get().compareTo(alone.get()) > 0;
    Optional<Qualifier> qualifier =
        worse && alone.get() == Qualifier.VALID ? Optional.of(Qualifier.TOLERATED) : alone;
    String remark =
        stuck
            ? "it did not move by one step while the starter turned, so it is not measured"
            : other
                ? "it rests as one battery, and the family is fed from two"
                : worse ? "single samples beside those of the output were lower" : zones.remark();
    return new Supply(
        column.title(),
        column.nearness(),
        rest,
        lowest(crank),
        Readings.median(judged, quantum_V),
        minimum,
        judged.size(),
        bounds.judged().map(w -> judged.longestSilence_s(w.start_s(), w.end_s())).orElse(0.0),
        zones.good_V(),
        zones.tolerated_V(),
        qualifier,
        judged.size() >= MANY && crank.constant(),
        remark);
  }

  private Optional<Measurement> lowest(Series crank) {
    return crank.isEmpty()
        ? Optional.empty()
        : Optional.of(Readings.single(crank.sorted()[0], 0, quantum_V));
  }

  private Optional<Measurement> minimum(Series judged) {
    return judged.isEmpty()
        ? Optional.empty()
        : Optional.of(Readings.single(Stats.robustLowest(judged.sorted()), 0, quantum_V));
  }

  /** The lowest supply within one poll of each sample of the output, taken as a minimum again. */
  private Optional<Double> pairedLowest(Series judged) {
    if (judged.isEmpty() || bounds.judged().isEmpty()) {
      return Optional.empty();
    }
    Series seen = outputs.within(bounds.judged().get().start_s(), bounds.judged().get().end_s());
    double[] pairs = new double[seen.size()];
    int n = 0;
    for (int i = 0; i < seen.size(); i++) {
      Series near = judged.within(seen.t_s(i) - skew_s, seen.t_s(i) + skew_s);
      if (!near.isEmpty()) {
        pairs[n++] = near.sorted()[0];
      }
    }
    double[] sorted = java.util.Arrays.copyOf(pairs, n);
    java.util.Arrays.sort(sorted);
    return n == 0 ? Optional.empty() : Optional.of(Stats.robustLowest(sorted));
  }

  /** The family's zones, doubled where a family of one battery is fed from two. */
  private record Zones(double good_V, double tolerated_V, String remark) {
    static Zones of(LogFamily family, Optional<Measurement> rest) {
      boolean two = rest.filter(r -> r.value() > LogFamily.TWO_BATTERIES_V).isPresent();
      boolean twice = two && family.input_V() < LogFamily.TWO_BATTERIES_V;
      return twice
          ? new Zones(
              2 * family.good_V(),
              2 * family.tolerated_V(),
              "it rests as two batteries, so the edges are doubled")
          : new Zones(family.good_V(), family.tolerated_V(), "");
    }

    Qualifier qualifier(double value_V) {
      if (value_V >= good_V - 1e-9) {
        return Qualifier.VALID;
      }
      return value_V >= tolerated_V - 1e-9 ? Qualifier.TOLERATED : Qualifier.VOID;
    }
  }
}
