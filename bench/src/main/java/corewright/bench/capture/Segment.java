package corewright.bench.capture;

import corewright.measures.Capture;
import java.util.List;

/**
 * What was sampled during one step. Where samples are missing the codes hold the last value, and a
 * gap says so.
 *
 * @param id of the step
 * @param kind of the step, as {@code HOLD}
 * @param rate_Hz samples a second and channel
 * @param first index of its first sample since sampling began at this rate
 * @param codes {@code codes[channel][sample]}
 * @param gaps counted from {@code first}
 */
@SuppressWarnings("ArrayRecordComponent") // large, read once, never compared
public record Segment(
    String id, String kind, double rate_Hz, long first, short[][] codes, List<Capture.Gap> gaps) {

  public Segment {
    gaps = List.copyOf(gaps);
  }

  public int samples() {
    return codes.length == 0 ? 0 : codes[0].length;
  }

  /** Index of the first sample after it. */
  public long end() {
    return first + samples();
  }
}
