package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One cranking after another: what the output held in each, the worst of them, and how alike they
 * are. One that could not be read leaves none of the readings: it might have been the worst.
 */
final class Cranking {
  static final Quantity[] ALL = {
    Quantity.CRANK_OUTPUT,
    Quantity.CRANK_LOWEST,
    Quantity.CRANK_DRIFT,
    Quantity.CRANK_SPREAD,
    Quantity.CRANK_INPUT
  };

  /** Of the output: so much the repeats of a sound unit never differ (common practice). */
  private static final double APART = 0.004;

  private static final Comparator<Measurement> BY_VALUE =
      Comparator.comparingDouble(Measurement::value);

  private Cranking() {}

  /**
   * One repeat.
   *
   * @param uMean of the mean, without gain and offset, which are the same in all repeats
   */
  record Repeat(
      Measurement mean, double uMean, Measurement lowest, Measurement drift, Measurement input) {}

  static Map<Quantity, Reading> read(List<Repeat> repeats, double gain_rel) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    readings.put(Quantity.CRANK_OUTPUT, least(repeats.stream().map(Repeat::mean).toList()));
    readings.put(Quantity.CRANK_LOWEST, least(repeats.stream().map(Repeat::lowest).toList()));
    readings.put(Quantity.CRANK_DRIFT, least(repeats.stream().map(Repeat::drift).toList()));
    readings.put(Quantity.CRANK_INPUT, least(repeats.stream().map(Repeat::input).toList()));
    Reading spread = spread(repeats, gain_rel);
    readings.put(Quantity.CRANK_SPREAD, spread.flagged(each(repeats, spread)));
    return readings;
  }

  private static Reading least(List<Measurement> all) {
    return new Reading.Measured(all.stream().min(BY_VALUE).orElseThrow(), List.of());
  }

  /** Each by itself, where they differ by more than one unit does. */
  private static List<String> each(List<Repeat> repeats, Reading spread) {
    double mean_V = repeats.get(0).mean().value();
    return spread.measurement().filter(m -> m.value() > APART * Math.abs(mean_V)).isEmpty()
        ? List.of()
        : List.of(
            repeats.stream()
                .map(r -> Figures.number(r.mean().value(), 1))
                .collect(Collectors.joining(", ", "One by one they held ", " V.")));
  }

  private static Reading spread(List<Repeat> repeats, double gain_rel) {
    if (repeats.size() < 2) {
      return Reading.none("once is no spread");
    }
    Comparator<Repeat> byMean = Comparator.comparing(Repeat::mean, BY_VALUE);
    Repeat low = repeats.stream().min(byMean).orElseThrow();
    Repeat high = repeats.stream().max(byMean).orElseThrow();
    double spread = high.mean().value() - low.mean().value();
    return Reading.of(
        spread, Root.of(low.uMean(), high.uMean(), gain_rel * spread), low.mean().unit());
  }
}
