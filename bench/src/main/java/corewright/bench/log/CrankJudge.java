package corewright.bench.log;

import corewright.bench.log.table.Column;
import corewright.bench.log.table.Role;
import corewright.bench.log.table.Row;
import corewright.bench.log.table.Sheet;
import corewright.bench.record.Qualifier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Judges one crank by itself: the supplies first, then each output. */
final class CrankJudge {
  private static final double SILENCE_S = 0.5;

  /** A silence is long from so many usual steps on. */
  private static final double USUAL_STEPS = 2.5;

  private static final double RUNNING_FROM_S = 1;
  private static final int RUNNING_SAMPLES = 8;
  private static final double RUNNING_SPAN_S = 3;

  private final Sheet sheet;
  private final List<Column> channels;
  private final LogFamily family;
  private final LogRule rule;

  /** Prepares the judging of a sheet's cranks. */
  CrankJudge(Sheet sheet, LogFamily family) {
    this.sheet = sheet;
    this.channels = sheet.channels();
    this.family = family;
    this.rule = LogRule.of(family);
  }

  Crank judge(Attempt attempt, boolean traced) {
    List<Row> rows = attempt.rows();
    List<Integer> feeds = nearestFirst();
    Bounds bounds = Bounds.of(attempt, feeds.stream().findFirst().map(c -> Series.of(rows, c)));
    List<Integer> outs = having(Role.OUTPUT);
    Series firstOutput =
        outs.stream().findFirst().map(c -> Series.of(rows, c)).orElse(Series.of(List.of(), 0));
    boolean bySpeed = attempt.foundBy() == Attempt.FoundBy.SPEED;
    List<Supply> supplies =
        feeds.stream()
            .map(
                c ->
                    new SupplyJudge(
                            family,
                            channels.get(c),
                            Series.of(rows, c),
                            sheet.quantum(c),
                            bounds,
                            firstOutput,
                            bySpeed)
                        .judge())
            .toList();
    Optional<Supply> worst = SupplyRank.counting(supplies);
    Crank.Load load = load(attempt, bounds);
    List<OutputJudge.Judged> judged = new ArrayList<>();
    for (int c : outs) {
      Series all = Series.of(rows, c);
      judged.add(
          new OutputJudge(channels.get(c), all, sheet.quantum(c), rule)
              .judge(
                  attempt,
                  bounds,
                  worst,
                  silent(all, feeds, rows, bounds),
                  load,
                  running(attempt, all, feeds),
                  family));
    }
    return CrankWords.crank(
        attempt,
        bounds,
        supplies,
        judged,
        worst.flatMap(Supply::qualifier),
        load,
        voidWithoutOutput(judged, worst),
        traced ? Overview.traces(channels, rows, 2000) : List.of());
  }

  private static Conclusion voidWithoutOutput(
      List<OutputJudge.Judged> judged, Optional<Supply> worst) {
    boolean tooLow = worst.flatMap(Supply::qualifier).filter(q -> q == Qualifier.VOID).isPresent();
    return judged.isEmpty() && tooLow ? Conclusion.VOID : Conclusion.INCONCLUSIVE;
  }

  private List<Integer> having(Role role) {
    return IntStream.range(0, channels.size())
        .filter(c -> channels.get(c).role() == role)
        .boxed()
        .toList();
  }

  private List<Integer> nearestFirst() {
    return having(Role.SUPPLY).stream()
        .sorted(Comparator.comparing((Integer c) -> channels.get(c).nearness()).reversed())
        .toList();
  }

  /** The larger share of the window that output or supplies spend in long silences. */
  private double silent(Series output, List<Integer> feeds, List<Row> rows, Bounds bounds) {
    if (bounds.judged().isEmpty()) {
      return 0;
    }
    Window w = bounds.judged().get();
    double supply = feeds.stream().mapToDouble(c -> silent(Series.of(rows, c), w)).min().orElse(0);
    return Math.max(silent(output, w), supply);
  }

  private static double silent(Series s, Window w) {
    double usual_s = Math.max(SILENCE_S, USUAL_STEPS * s.medianStep_s());
    return s.silent_s(w.start_s(), w.end_s(), usual_s) / w.length_s();
  }

  private Crank.Load load(Attempt attempt, Bounds bounds) {
    if (attempt.end() == Attempt.End.STARTED) {
      return Crank.Load.PROVEN;
    }
    boolean seen = false;
    boolean active = false;
    boolean proof = false;
    for (Role role : List.of(Role.FUEL, Role.SYNC)) {
      for (int c : having(role)) {
        Series s = Series.of(attempt.rows(), c).within(bounds.start_s(), bounds.end_s());
        for (int i = 0; i < s.size(); i++) {
          seen = true;
          active |= s.value(i) > 0;
          proof |= role == Role.FUEL && s.value(i) > 0;
        }
      }
    }
    if (proof) {
      return Crank.Load.PROVEN;
    }
    return seen && !active ? Crank.Load.INHIBITED : Crank.Load.NOT_SHOWN;
  }

  private Optional<OutputCase.Running> running(
      Attempt attempt, Series output, List<Integer> feeds) {
    if (attempt.end() != Attempt.End.STARTED || feeds.isEmpty()) {
      return Optional.empty();
    }
    double from_s = attempt.end_s() + RUNNING_FROM_S;
    double to_s = runsUntil_s(attempt, from_s);
    Series ran = output.within(from_s, to_s);
    Series fed = Series.of(attempt.rows(), feeds.get(0)).within(from_s, to_s);
    boolean enough =
        ran.size() >= RUNNING_SAMPLES && ran.span_s() >= RUNNING_SPAN_S && fed.size() > 2;
    return enough
        ? Optional.of(
            new OutputCase.Running(
                Stats.lowestQuarter(ran.sorted()), Stats.robustLowest(fed.sorted())))
        : Optional.empty();
  }

  private double runsUntil_s(Attempt attempt, double from_s) {
    double until_s = from_s;
    for (Row row : attempt.rows()) {
      for (int c : having(Role.SPEED)) {
        if (row.t_s() >= from_s && row.value(c) <= 400) {
          return until_s;
        }
      }
      until_s = Math.max(until_s, row.t_s());
    }
    return until_s;
  }
}
