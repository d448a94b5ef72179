package corewright.measures.meter;

import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A short stretch sampled fast, at one load: the ripple in a bandwidth that everybody can state.
 */
final class Burst {
  /** Common practice, no source: what a record can be compared by, whatever took it. */
  private static final double BANDWIDTH_HZ = 300e3;

  static final Quantity[] ALL = {
    Quantity.BURST_PEAK_TO_PEAK, Quantity.BURST_RMS, Quantity.BURST_FUNDAMENTAL
  };

  private Burst() {}

  static Map<Quantity, Reading> read(Channel output, Window window, MeterSettings settings) {
    if (window.unread().isPresent()) {
      return StepMeter.none(Reading.none(window.unread().get()), ALL);
    }
    Readings readings = new Readings();
    Level level = output.level(window);
    Ripple.read(output, window, level, settings.withBandwidth(Optional.of(BANDWIDTH_HZ)), readings);
    Map<Quantity, Reading> read = new EnumMap<>(Quantity.class);
    read.put(Quantity.BURST_PEAK_TO_PEAK, readings.all().get(Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND));
    read.put(Quantity.BURST_RMS, readings.all().get(Quantity.RIPPLE_RMS_IN_BAND));
    read.put(Quantity.BURST_FUNDAMENTAL, readings.all().get(Quantity.RIPPLE_FUNDAMENTAL));
    return read;
  }
}
