package corewright.measures.meter;

import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** How often the intervals of each quantity held the truth, over many records. */
final class Coverage {
  private final Map<Quantity, List<double[]>> outcomes = new EnumMap<>(Quantity.class);

  /**
   * Draws {@code count} records and takes what their readings are off by. Each has a seed of its
   * own, {@code seed} and those after it, and so is the same whichever processor makes it.
   */
  Coverage of(int count, long seed, BiConsumer<RandomGenerator, Coverage> record) {
    IntStream.range(0, count)
        .parallel()
        .mapToObj(
            i -> {
              Coverage one = new Coverage();
              record.accept(new SplittableRandom(seed + i), one);
              return one.outcomes;
            })
        .toList()
        .forEach(this::add);
    return this;
  }

  private void add(Map<Quantity, List<double[]>> more) {
    more.forEach((q, all) -> outcomes.computeIfAbsent(q, none -> new ArrayList<>()).addAll(all));
  }

  /** What the intervals of one quantity are worth. */
  record Line(Quantity quantity, int count, double covered, double width) {
    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%-26s %7d readings, %.2f %% within U, U %.2f of the half-width",
          quantity.id(),
          count,
          100 * covered,
          width);
    }
  }

  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    outcomes.forEach(
        (quantity, all) -> {
          double[] ratios = all.stream().mapToDouble(o -> Math.abs(o[0]) / o[1]).sorted().toArray();
          double covered =
              (double) Arrays.stream(ratios).filter(ratio -> ratio <= 1).count() / all.size();
          // What all U could be multiplied by to hold exactly 95 %: the empirical half-width.
          double halfWidth = ratios[(int) (0.95 * (ratios.length - 1))];
          lines.add(new Line(quantity, all.size(), covered, 1 / halfWidth));
        });
    return lines;
  }

  /** Where the hold has that reading. */
  void add(MeasuredHold hold, Quantity quantity, double truth) {
    hold.value(quantity).ifPresent(read -> add(quantity, read, truth));
  }

  /** Where the run has that reading. */
  void add(MeasuredRun run, Quantity quantity, double truth) {
    run.reading(quantity).measurement().ifPresent(read -> add(quantity, read, truth));
  }

  private void add(Quantity quantity, Measurement read, double truth) {
    outcomes
        .computeIfAbsent(quantity, q -> new ArrayList<>())
        .add(new double[] {read.value() - truth, read.expanded(2)});
  }
}
