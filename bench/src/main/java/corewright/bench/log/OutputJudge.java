package corewright.bench.log;

import corewright.bench.log.table.Column;
import corewright.measures.Measurement;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads one output in one crank and asks the rules. */
final class OutputJudge {
  private static final double REST_S = 5;
  private static final double AFTER_S = 3;
  private static final double RECOVERY_S = 1;

  /** Share of samples at the greatest value from which on the channel is cut off there. */
  private static final double PINNED = 0.3;

  private final Column column;
  private final Series all;
  private final double quantum_V;
  private final LogRule rule;

  OutputJudge(Column column, Series all, double quantum_V, LogRule rule) {
    this.column = column;
    this.all = all;
    this.quantum_V = quantum_V;
    this.rule = rule;
  }

  /** What was read and decided, with the case for the doubts. */
  record Judged(Output output, OutputCase seen, String reason) {}

  /**
   * Judges it.
   *
   * @param silent share of the window in long silences of output or supply
   */
  Judged judge(
      Attempt attempt,
      Bounds bounds,
      Optional<Supply> worst,
      double silent,
      Crank.Load load,
      Optional<OutputCase.Running> running,
      LogFamily family) {
    Series about = all.within(bounds.start_s() - REST_S, bounds.end_s() + AFTER_S);
    int held = HeldValues.rowsPerSample(about);
    Series rows =
        bounds.judged().map(w -> all.within(w.start_s(), w.end_s())).orElse(all.within(1, 0));
    Series samples = HeldValues.samples(rows, held);
    Drift drift = Drift.of(samples, Readings.step_V(quantum_V));
    boolean coarse = quantum_V >= 0.4 * family.output_V() / 48;
    OutputCase seen =
        new OutputCase(
            bounds,
            attempt.length_s(),
            samples,
            held,
            quantum_V,
            about.size() > 3 && about.constant() && !coarse,
            clipped(about),
            silent,
            worst,
            load,
            running,
            drift,
            rule,
            family);
    OutputRules.Decided decided = OutputRules.decide(seen);
    return new Judged(
        output(bounds, about, rows, seen, decided.conclusion()), seen, decided.reason());
  }

  private Output output(
      Bounds bounds, Series about, Series rows, OutputCase seen, Conclusion conclusion) {
    Series samples = seen.samples();
    Series crank = all.within(bounds.start_s(), bounds.end_s());
    double scatter_V = Stats.scatter(samples);
    return new Output(
        column.title(),
        Readings.median(
            about.within(bounds.start_s() - REST_S, bounds.start_s() - 1e-9), quantum_V),
        one(crank, true),
        one(rows, false),
        Readings.median(samples, quantum_V),
        samples.isEmpty() ? Optional.empty() : Optional.of(seen.lowestQuarter()),
        Readings.drift(seen.drift()),
        samples.size() < 3
            ? Optional.empty()
            : Optional.of(Readings.volts(scatter_V, scatter_V / Math.sqrt(2.0 * samples.size()))),
        change(samples, scatter_V),
        Readings.median(all.within(bounds.end_s() + 1e-9, bounds.end_s() + RECOVERY_S), quantum_V),
        samples.size(),
        bounds.judged().map(w -> rows.longestSilence_s(w.start_s(), w.end_s())).orElse(0.0),
        conclusion);
  }

  private Optional<Measurement> one(Series s, boolean first) {
    return s.isEmpty()
        ? Optional.empty()
        : Optional.of(Readings.single(first ? s.first() : s.last(), 0, quantum_V));
  }

  private Optional<Measurement> change(Series s, double scatter_V) {
    if (s.size() < 2) {
      return Optional.empty();
    }
    int n = s.size() >= 6 ? 3 : 1;
    double[] head = new double[n];
    double[] tail = new double[n];
    for (int i = 0; i < n; i++) {
      head[i] = s.value(i);
      tail[i] = s.value(s.size() - n + i);
    }
    Arrays.sort(head);
    Arrays.sort(tail);
    double change_V = Stats.median(tail) - Stats.median(head);
    return Optional.of(Readings.single(change_V, scatter_V * Math.sqrt(2.0 / n), quantum_V));
  }

  /** A ceiling: a round number far above nominal that a third of the samples keep to. */
  private boolean clipped(Series about) {
    double[] sorted = about.sorted();
    if (sorted.length < 5) {
      return false;
    }
    double top = sorted[sorted.length - 1];
    long pinned = Arrays.stream(sorted).filter(v -> v == top).count();
    boolean round = Math.abs(top * 2 - Math.rint(top * 2)) < 1e-9 || CEILINGS.contains(top);
    return top >= rule.clip_V() && round && pinned >= PINNED * sorted.length;
  }

  /** All bits of a byte, at the usual scales, V. */
  private static final List<Double> CEILINGS = List.of(51.15, 63.75, 65.535, 102.3, 127.5);
}
