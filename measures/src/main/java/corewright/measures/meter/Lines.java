package corewright.measures.meter;

import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Line regulation: the lowest and the highest of the levels that the output settled at. */
final class Lines {
  private static final Quantity[] ALL = {
    Quantity.LINE_LOWEST, Quantity.LINE_HIGHEST, Quantity.LINE_EFFECT
  };

  private Lines() {}

  /** A level that was not read leaves none of the readings: it might have been the worst. */
  static Map<Quantity, Reading> read(List<Reading> levels, ChannelDoubt doubt) {
    Optional<Reading> missing = levels.stream().filter(r -> r.measurement().isEmpty()).findFirst();
    if (missing.isPresent() || levels.isEmpty()) {
      return StepMeter.none(missing.orElse(Reading.none("no level was held")), ALL);
    }
    Comparator<Measurement> byValue = Comparator.comparingDouble(Measurement::value);
    List<Measurement> read = levels.stream().flatMap(r -> r.measurement().stream()).toList();
    Measurement low = read.stream().min(byValue).orElseThrow();
    Measurement high = read.stream().max(byValue).orElseThrow();
    double effect = high.value() - low.value();
    double u = Root.of(random(low, doubt), random(high, doubt), doubt.gain_rel() * effect);
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    readings.put(Quantity.LINE_LOWEST, new Reading.Measured(low, List.of()));
    readings.put(Quantity.LINE_HIGHEST, new Reading.Measured(high, List.of()));
    readings.put(Quantity.LINE_EFFECT, Reading.of(effect, u, low.unit()));
    return readings;
  }

  /** Without gain and offset, which are the same at every level. */
  private static double random(Measurement m, ChannelDoubt doubt) {
    double fixed = Root.of(doubt.gain_rel() * m.value(), doubt.offset());
    return Math.sqrt(Math.max(0, m.u() * m.u() - fixed * fixed));
  }
}
