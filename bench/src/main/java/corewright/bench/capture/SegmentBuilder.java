package corewright.bench.capture;

import corewright.measures.Capture.Gap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts the frames of one step together. Not thread-safe. */
final class SegmentBuilder {
  private final String id;
  private final String kind;
  private final double rate_Hz;
  private final List<Gap> gaps = new ArrayList<>();
  private long first;
  private short[][] codes;
  private int size;

  SegmentBuilder(String id, String kind, double rate_Hz, int channels) {
    this.id = id;
    this.kind = kind;
    this.rate_Hz = rate_Hz;
    this.codes = new short[channels][0];
  }

  /**
   * @param at index of the first of these samples since the start of the run
   * @throws IllegalArgumentException if they overlap with what is there, or the hole before them is
   *     larger than memory
   */
  void add(long at, short[][] samples) {
    if (size == 0) {
      first = at;
    }
    long missing = at - first - size;
    int count = samples.length == 0 ? 0 : samples[0].length;
    if (samples.length != codes.length
        || missing < 0
        || missing + size + count > Integer.MAX_VALUE / 2) {
      throw new IllegalArgumentException(
          samples.length + " channels from sample " + at + " do not follow on " + (first + size));
    }
    if (missing > 0) {
      gaps.add(new Gap(size, (int) missing));
    }
    int end = size + (int) missing + count;
    for (int c = 0; c < codes.length; c++) {
      if (codes[c].length < end) {
        codes[c] = Arrays.copyOf(codes[c], Math.max(end, 2 * codes[c].length));
      }
      if (missing > 0) {
        Arrays.fill(codes[c], size, size + (int) missing, codes[c][size - 1]);
      }
      System.arraycopy(samples[c], 0, codes[c], size + (int) missing, count);
    }
    size = end;
  }

  /** Says where samples are missing although codes stand there. */
  void add(List<Gap> known) {
    gaps.addAll(known);
  }

  boolean isEmpty() {
    return size == 0;
  }

  Segment build() {
    short[][] whole = new short[codes.length][];
    for (int c = 0; c < codes.length; c++) {
      whole[c] = Arrays.copyOf(codes[c], size);
    }
    return new Segment(id, kind, rate_Hz, first, whole, gaps);
  }
}
