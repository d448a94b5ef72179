package corewright.bench.capture.csv;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * A text as the scanner takes it, UTF-8 with line feeds and without quotes, whatever it was written
 * by: UTF-16 with its mark, lines that end in a carriage return alone, fields in quotes. A text
 * that is plain already goes through untouched.
 */
final class PlainText {
  private static final int LOOK = 1 << 14;

  private PlainText() {}

  /**
   * @param in supports marks
   * @return supports marks
   */
  static InputStream of(InputStream in) throws IOException {
    in.mark(LOOK + 1);
    byte[] start = in.readNBytes(LOOK);
    in.reset();
    InputStream text = in;
    if (isUtf16(start)) {
      text = new Recoded(in, StandardCharsets.UTF_16);
      byte[] recoded = text.readNBytes(LOOK);
      start = recoded;
      text = new SequenceInputStream(new ByteArrayInputStream(recoded), text);
    }
    boolean returns = has(start, '\r') && !has(start, '\n');
    boolean quotes = has(start, '"');
    if (returns || quotes) {
      text = new Plain(text, returns);
    }
    return text == in ? in : new BufferedInputStream(text, 1 << 16);
  }

  private static boolean isUtf16(byte[] start) {
    if (start.length < 2) {
      return false;
    }
    int mark = ((start[0] & 0xFF) << 8) | (start[1] & 0xFF);
    return mark == 0xFEFF || mark == 0xFFFE;
  }

  private static boolean has(byte[] bytes, char wanted) {
    for (byte b : bytes) {
      if (b == wanted) {
        return true;
      }
    }
    return false;
  }

  /** Leaves quotes out, and ends lines with a line feed. */
  private static final class Plain extends FilterInputStream {
    private final boolean returns;
    private boolean inQuotes;

    Plain(InputStream in, boolean returns) {
      super(in);
      this.returns = returns;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      int kept = 0;
      while (kept == 0 && length > 0) {
        int found = super.read(into, from, length);
        if (found < 0) {
          return -1;
        }
        for (int i = from; i < from + found; i++) {
          byte b = into[i];
          if (b == '"') {
            inQuotes = !inQuotes;
          } else {
            into[from + kept++] = plain(b);
          }
        }
      }
      return kept;
    }

    @Override
    public boolean markSupported() {
      return false;
    }

    /** A comma inside quotes is a mark of thousands or of decimals; which, nobody says. */
    private byte plain(byte b) {
      if (b == ',' && inQuotes) {
        return '\'';
      }
      return returns && b == '\r' ? (byte) '\n' : b;
    }
  }

  /** A text in another encoding as UTF-8. */
  private static final class Recoded extends InputStream {
    private final Reader text;
    private final CharBuffer chars = CharBuffer.allocate(1 << 14);
    private ByteBuffer bytes = ByteBuffer.allocate(0);

    Recoded(InputStream in, Charset charset) {
      text = new InputStreamReader(in, charset);
    }

    @Override
    public int read() throws IOException {
      return fill() ? bytes.get() & 0xFF : -1;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      if (!fill()) {
        return -1;
      }
      int count = Math.min(length, bytes.remaining());
      bytes.get(into, from, count);
      return count;
    }

    private boolean fill() throws IOException {
      while (!bytes.hasRemaining()) {
        chars.clear();
        if (text.read(chars) < 0) {
          return false;
        }
        bytes = StandardCharsets.UTF_8.encode(chars.flip());
      }
      return true;
    }

    @Override
    public void close() throws IOException {
      text.close();
    }
  }
}
