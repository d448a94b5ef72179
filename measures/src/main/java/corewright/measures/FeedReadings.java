package corewright.measures;

/**
 * What one supply feed did during one hold.
 *
 * @param name the feed's name in profile and capture, {@code input} where there is only one
 * @param mean over the judged window
 * @param minimum lowest raw sample of the whole hold
 * @param lowestMedian lowest 1 ms median of the whole hold: what the input qualifier is taken from
 */
public record FeedReadings(String name, Reading mean, Reading minimum, Reading lowestMedian) {}
