package corewright.measures;

import java.util.List;
import java.util.Optional;

/**
 * The sampled waveforms of a run on one uniform time base; the first sample is at 0 s. All
 * waveforms have the same size.
 *
 * @param sampleRate_Hz per channel
 * @param load load current; empty where it was not recorded
 * @param feeds supply feeds, at least one, in the profile's order
 * @param inputCurrent supply current, where it was recorded
 * @param gaps where samples are missing, in order
 */
public record Capture(
    double sampleRate_Hz,
    Waveform output,
    Optional<Waveform> load,
    List<Feed> feeds,
    Optional<Waveform> inputCurrent,
    List<Gap> gaps) {

  public Capture {
    feeds = List.copyOf(feeds);
    gaps = List.copyOf(gaps);
    if (!(sampleRate_Hz > 0)) {
      throw new IllegalArgumentException("sample rate is not above 0: " + sampleRate_Hz);
    }
  }

  public int size() {
    return output.size();
  }

  /** A supply feed at the unit's terminals. */
  public record Feed(String name, Waveform voltage) {}

  /**
   * Samples that never arrived. The waveforms hold the last value there, so that the time base
   * stays uniform; a window that touches a gap is not read.
   *
   * @param from index of the first missing sample
   * @param count how many are missing
   */
  public record Gap(int from, int count) {
    public boolean touches(int fromSample, int toSampleExclusive) {
      return from < toSampleExclusive && from + count > fromSample;
    }
  }
}
