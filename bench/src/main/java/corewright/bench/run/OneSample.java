package corewright.bench.run;

import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What one sample of a channel says, with its U: gain, offset, and the noise where the bench's file
 * states it (JCGM 100, 5.1.2). Of several samples less would be left of the noise, and none of the
 * rest.
 */
final class OneSample {
  private final Map<String, ChannelCalibration> known;

  OneSample(BenchDescription bench) {
    known =
        bench.channels().stream()
            .collect(Collectors.toMap(ChannelCalibration::channel, Function.identity()));
  }

  /**
   * As {@code 56.10 ± 0.06 V}; in words where it is beyond what the digitizer can tell, or where
   * the bench's file says nothing of the channel.
   */
  String words(String channel, double value, Unit unit) {
    if (Double.isInfinite(value)) {
      return "beyond the digitizer's range";
    }
    ChannelCalibration is = known.get(channel);
    if (is == null) {
      return Figures.number(value, 2)
          + " "
          + unit.symbol()
          + " (U not known: channel "
          + channel
          + " is not in the bench's file)";
    }
    double u = Math.hypot(is.gain_rel() * value, Math.hypot(is.offset(), is.noise().orElse(0.0)));
    return Figures.withU(new Measurement(value, u, unit));
  }
}
