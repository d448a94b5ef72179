package corewright.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One hold of a capture with its readings.
 *
 * @param index 0 for the first hold of the capture
 * @param start_s middle of the load edge that begins it, s from the first sample; 0 for the first
 * @param end_s where the next hold begins, or the end of the capture
 * @param windowStart_s first instant that is judged, {@code start_s} + settle
 * @param windowEnd_s end of the judged window (exclusive), {@code end_s} − guard
 * @param readings every per-hold {@link Quantity}, present even where it was not measured
 * @param feeds one entry for each supply feed, in the capture's order
 * @param recoveryState {@code recovered}, {@code never_left}, {@code not_recovered}, {@code
 *     no_edge} or {@code not_measured}
 */
public record MeasuredHold(
    int index,
    double start_s,
    double end_s,
    double windowStart_s,
    double windowEnd_s,
    Map<Quantity, Reading> readings,
    List<FeedReadings> feeds,
    String recoveryState) {

  public MeasuredHold {
    readings = Map.copyOf(readings);
    feeds = List.copyOf(feeds);
  }

  /** The number, or empty where it was not measured. */
  public Optional<Measurement> value(Quantity quantity) {
    Reading reading = readings.get(quantity);
    return reading == null ? Optional.empty() : reading.measurement();
  }
}
