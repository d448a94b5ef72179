package corewright.bench.log;

import corewright.bench.record.Qualifier;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two logs of one vehicle, before and after something was done.
 *
 * @param change of the lowest quarter of the output, after minus before; empty where one has none
 *     that may be judged
 * @param sentences most important first
 */
public record Comparison(Optional<Measurement> change, List<String> sentences) {
  /** Supplies further apart than this make two logs hard to compare, V. */
  private static final double ALIKE_V = 0.5;

  public Comparison {
    sentences = List.copyOf(sentences);
  }

  /** Compares the cranks that decided. */
  public static Comparison of(LogReading before, LogReading after) {
    List<String> sentences = new ArrayList<>();
    Optional<Side> first = Side.of(before);
    Optional<Side> second = Side.of(after);
    if (first.isEmpty() || second.isEmpty()) {
      String which =
          first.isEmpty()
              ? second.isEmpty() ? "Neither log holds" : "The first log does not hold"
              : "The second log does not hold";
      sentences.add(
          which
              + " a crank in which output and supply may be judged: there is nothing to compare.");
      return new Comparison(Optional.empty(), sentences);
    }
    Measurement low = first.get().low;
    Measurement high = second.get().low;
    Measurement change = Readings.volts(high.value() - low.value(), Math.hypot(low.u(), high.u()));
    boolean told = Math.abs(change.value()) > change.expanded(2);
    sentences.add(
        "Before, the output's lowest quarter was "
            + Figures.withU(low)
            + " with the supply at or above "
            + Figures.withU(first.get().supply)
            + "; after, "
            + Figures.withU(high)
            + " with the supply at or above "
            + Figures.withU(second.get().supply)
            + ": "
            + (told
                ? Figures.number(Math.abs(change.value()), 2)
                    + " V "
                    + (change.value() > 0 ? "higher" : "lower")
                : "no difference that these logs can tell")
            + ".");
    sentences.add(
        "Before: " + before.conclusion().id() + ". After: " + after.conclusion().id() + ".");
    double supplies_V = second.get().supply.value() - first.get().supply.value();
    if (Math.abs(supplies_V) > ALIKE_V) {
      sentences.add(
          "The supplies differ by "
              + Figures.number(Math.abs(supplies_V), 1)
              + " V, so part of the change may be theirs.");
    }
    sentences.add(LogReading.NOT_ABOVE_THE_BENCH);
    return new Comparison(Optional.of(change), sentences);
  }

  private record Side(Measurement low, Measurement supply) {
    static Optional<Side> of(LogReading reading) {
      return reading.deciding().flatMap(Side::of);
    }

    private static Optional<Side> of(Crank crank) {
      Optional<Measurement> low =
          crank.outputs().stream().flatMap(o -> o.lowestQuarter().stream()).findFirst();
      Optional<Measurement> supply =
          crank.supplies().stream().flatMap(s -> s.minimum().stream()).findFirst();
      boolean judged = crank.qualifier().filter(q -> q != Qualifier.VOID).isPresent();
      return judged && low.isPresent() && supply.isPresent()
          ? Optional.of(new Side(low.get(), supply.get()))
          : Optional.empty();
    }
  }
}
