package corewright.measures.meter;

import corewright.measures.FeedReadings;
import corewright.measures.Measurement;
import corewright.measures.Reading;
import corewright.measures.wave.LowestMedian;
import java.util.List;

/**
 * Reads one supply feed in one hold.
 *
 * @param name as the capture calls it
 */
record FeedMeter(String name, Channel channel) {
  private static final double MEDIAN_S = 1e-3;

  FeedReadings read(Window window) {
    return new FeedReadings(
        name,
        window
            .unread()
            .map(Reading::none)
            .orElseGet(
                () -> {
                  Level level = channel.level(window);
                  return measured(channel.absolute(level.mean(), level.uMean()));
                }),
        channel.lowest(window),
        window.missing() == Window.Missing.INSIDE_THE_WINDOW
            ? Reading.none(Channel.GAP)
            : new Reading.Measured(lowestMedian(window), Channel.flags(window)));
  }

  private Measurement lowestMedian(Window window) {
    return lowestMedian(channel, window.holdFrom(), window.holdTo());
  }

  /** The lowest median of 1 ms between two samples. */
  static Measurement lowestMedian(Channel channel, int from, int to) {
    int length = (int) Math.max(1, Math.round(MEDIAN_S * channel.sampleRate_Hz()));
    double lowest = LowestMedian.of(channel.wave(), from, to, length);
    return channel.absolute(lowest, channel.resolution().ofOne());
  }

  private static Reading measured(Measurement measurement) {
    return new Reading.Measured(measurement, List.of());
  }
}
