package corewright.bench.capture;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.NoSuchElementException;

/** Lines that end with CR, LF or both, none longer than a log's can be. */
final class LogLines implements Iterator<String> {
  /** A line with more characters than this is none: the file is something else. */
  static final int LONGEST = 1 << 20;

  private final Path file;
  private final Reader reader;
  private final char[] chunk = new char[1 << 15];
  private final StringBuilder line = new StringBuilder();
  private int at;
  private int end;
  private int number;
  private boolean over;

  LogLines(Path file, Reader reader) {
    this.file = file;
    this.reader = reader;
  }

  @Override
  public boolean hasNext() {
    return !over && (at < end || fill());
  }

  @Override
  public String next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    number++;
    line.setLength(0);
    while (at < end || fill()) {
      int start = at;
      while (at < end && chunk[at] != '\n' && chunk[at] != '\r') {
        at++;
      }
      if (line.length() + at - start > LONGEST) {
        throw LogFile.refuse(
            file,
            number,
            "this line has more than " + LONGEST + " characters, and no log has such",
            "Export the recording as CSV");
      }
      if (at < end && line.isEmpty()) {
        String whole = new String(chunk, start, at - start);
        skipEnd();
        return whole;
      }
      line.append(chunk, start, at - start);
      if (at < end) {
        skipEnd();
        return line.toString();
      }
    }
    return line.toString();
  }

  private void skipEnd() {
    boolean carriageReturn = chunk[at++] == '\r';
    if (carriageReturn && (at < end || fill()) && chunk[at] == '\n') {
      at++;
    }
  }

  private boolean fill() {
    try {
      int n = over ? -1 : reader.read(chunk, 0, chunk.length);
      at = 0;
      end = Math.max(0, n);
      over = n < 0;
      return n > 0;
    } catch (IOException broken) {
      throw new UncheckedIOException("cannot read " + file, broken);
    }
  }
}
