package corewright.bench.capture;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Finds the encoding of a text: by its byte order mark, else UTF-16 by its zeros, else UTF-8 if
 * every byte fits, else Windows-1252, in which any byte does.
 */
final class LogEncoding {
  private static final int HEAD = 4096;
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  /** Share of control characters from which on a file is no text. */
  private static final double MOST_CONTROLS = 0.05;

  private final byte[] head = new byte[HEAD];
  private final CharsetDecoder utf8 = StandardCharsets.UTF_8.newDecoder();
  private final CharBuffer sink = CharBuffer.allocate(1 << 16);
  private ByteBuffer left = ByteBuffer.allocate(0);
  private int headBytes;
  private boolean isUtf8 = true;
  private boolean ascii = true;

  /**
   * What was found.
   *
   * @param markBytes length of the byte order mark, to be skipped
   */
  record Found(Charset charset, int markBytes, String words) {}

  void look(byte[] chunk, int n) {
    int kept = Math.min(n, HEAD - headBytes);
    System.arraycopy(chunk, 0, head, headBytes, kept);
    headBytes += kept;
    for (int i = 0; i < n && ascii; i++) {
      ascii = chunk[i] >= 0;
    }
    if (isUtf8) {
      decode(chunk, n);
    }
  }

  private void decode(byte[] chunk, int n) {
    ByteBuffer in = ByteBuffer.allocate(left.remaining() + n);
    in.put(left).put(chunk, 0, n).flip();
    CoderResult result = CoderResult.OVERFLOW;
    while (result.isOverflow()) {
      sink.clear();
      result = utf8.decode(in, sink, false);
    }
    isUtf8 = !result.isError();
    left = in;
  }

  Found found(Path file) {
    Found found = byMark();
    if (found.charset.equals(StandardCharsets.UTF_8) || found.charset.equals(WINDOWS_1252)) {
      refuseBinary(file);
    }
    return found;
  }

  private Found byMark() {
    if (starts(0xEF, 0xBB, 0xBF)) {
      return new Found(StandardCharsets.UTF_8, 3, "UTF-8 with byte order mark");
    }
    if (starts(0xFF, 0xFE)) {
      return new Found(StandardCharsets.UTF_16LE, 2, "UTF-16LE");
    }
    if (starts(0xFE, 0xFF)) {
      return new Found(StandardCharsets.UTF_16BE, 2, "UTF-16BE");
    }
    int even = zeros(0);
    int odd = zeros(1);
    if (odd > 0.3 * headBytes / 2 && even < odd / 10) {
      return new Found(StandardCharsets.UTF_16LE, 0, "UTF-16LE without a byte order mark");
    }
    if (even > 0.3 * headBytes / 2 && odd < even / 10) {
      return new Found(StandardCharsets.UTF_16BE, 0, "UTF-16BE without a byte order mark");
    }
    if (ascii) {
      return new Found(StandardCharsets.UTF_8, 0, "ASCII");
    }
    return isUtf8
        ? new Found(StandardCharsets.UTF_8, 0, "UTF-8")
        : new Found(WINDOWS_1252, 0, "Windows-1252, since it is no UTF-8");
  }

  private boolean starts(int... signs) {
    if (headBytes < signs.length) {
      return false;
    }
    for (int i = 0; i < signs.length; i++) {
      if ((head[i] & 0xFF) != signs[i]) {
        return false;
      }
    }
    return true;
  }

  private int zeros(int from) {
    int zeros = 0;
    for (int i = from; i < headBytes; i += 2) {
      zeros += head[i] == 0 ? 1 : 0;
    }
    return zeros;
  }

  private void refuseBinary(Path file) {
    byte[] seen = Arrays.copyOf(head, headBytes);
    int controls = 0;
    for (byte b : seen) {
      boolean blank = b == '\t' || b == '\r' || b == '\n' || b == '\f' || b == 0x1A || b == 0;
      controls += b >= 0 && b < ' ' && !blank ? 1 : 0;
    }
    if (controls > MOST_CONTROLS * headBytes) {
      throw LogFile.refuse(
          file, 1, "this is a binary file, not a text", "Export the recording as CSV");
    }
  }
}
