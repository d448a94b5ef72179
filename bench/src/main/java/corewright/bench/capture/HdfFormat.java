package corewright.bench.capture;

/** Names inside a sealed capture; described in bench/README.md. */
final class HdfFormat {
  static final String FORMAT = "format";
  static final String FORMAT_1 = "corewright capture 1";
  static final String RATE = "rate_Hz";
  static final String FEEDS = "feeds";
  static final String NOTE = "note.";
  static final String END = "end.";
  static final String CHANNELS = "channels";

  static final String ID = "step";
  static final String KIND = "kind";
  static final String FIRST = "firstSample";
  static final String GAPS = "gaps";

  static final String UNIT = "unit";
  static final String LSB = "lsb";
  static final String OFFSET = "offset";

  /** Samples in a chunk: 128 KiB before it is deflated. */
  static final int CHUNK = 65_536;

  private HdfFormat() {}
}
