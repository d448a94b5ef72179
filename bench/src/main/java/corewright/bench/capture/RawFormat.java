package corewright.bench.capture;

import java.nio.charset.StandardCharsets;

/**
 * Bytes of a raw capture, described in bench/README.md: the mark, then records of kind (u8), length
 * of content (u32), content, CRC-32C over all three (u32); little-endian.
 */
final class RawFormat {
  static final byte[] MARK = "CWRAW 1\n".getBytes(StandardCharsets.US_ASCII);

  static final byte HEADER = 'H';
  static final byte SEGMENT = 'S';
  static final byte FRAME = 'F';
  static final byte END = 'E';

  static final int CHECK_BYTES = 4;

  /** Kind and length before, check after. */
  static final int AROUND_BYTES = 1 + 4 + CHECK_BYTES;

  /** First sample, channels, samples, status, frames broken before. */
  static final int FRAME_HEAD_BYTES = 8 + 2 + 4 + 2 + 4;

  /** Longer records are damage. */
  static final int MOST_BYTES = 1 << 26;

  private RawFormat() {}
}
