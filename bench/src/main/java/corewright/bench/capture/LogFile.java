package corewright.bench.capture;

import corewright.bench.log.table.LogText;
import corewright.files.BadFile;
import corewright.files.Mistake;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;

/**
 * A customer's log as a file: hashed as it came, its encoding found, read line by line as often as
 * asked. Nothing of it stays in memory.
 */
public final class LogFile implements LogText {
  private final Path file;
  private final LogBytes bytes;
  private final LogEncoding.Found encoding;
  private final String sha256;

  private LogFile(Path file, LogBytes bytes, LogEncoding.Found encoding, String sha256) {
    this.file = file;
    this.bytes = bytes;
    this.encoding = encoding;
    this.sha256 = sha256;
  }

  /**
   * Looks at every byte once.
   *
   * @throws BadFile if there is no such file, if it is too large, or no text
   */
  public static LogFile open(Path file) {
    LogBytes bytes = LogBytes.of(file);
    try {
      LogEncoding encoding = new LogEncoding();
      try (InputStream in = bytes.open()) {
        byte[] chunk = new byte[1 << 16];
        long total = 0;
        for (int n = in.read(chunk); n > 0; n = in.read(chunk)) {
          encoding.look(chunk, n);
          total += n;
          if (total > LogBytes.LARGEST_BYTES) {
            throw LogBytes.tooLarge(file);
          }
        }
      }
      LogEncoding.Found found = encoding.found(file);
      return new LogFile(file, bytes, found, bytes.sha256());
    } catch (IOException broken) {
      throw refuse(file, 1, "it cannot be read (" + broken.getMessage() + ")", "Ask for it again");
    }
  }

  @Override
  public String name() {
    return file.toString();
  }

  /** SHA-256 of the file as it came, lower-case hex. */
  public String sha256() {
    return sha256;
  }

  /** How its text is encoded, for people. */
  public String encoding() {
    return encoding.words();
  }

  @Override
  public <T> T lines(Function<Iterator<String>, T> use) {
    try (InputStream in = new BufferedInputStream(bytes.open(), 1 << 16)) {
      in.skipNBytes(encoding.markBytes());
      Reader reader =
          new InputStreamReader(
              in,
              encoding
                  .charset()
                  .newDecoder()
                  .onMalformedInput(CodingErrorAction.REPLACE)
                  .onUnmappableCharacter(CodingErrorAction.REPLACE));
      return use.apply(new LogLines(file, reader));
    } catch (IOException broken) {
      throw new UncheckedIOException("cannot read " + file, broken);
    }
  }

  static BadFile refuse(Path file, int line, String message, String suggestion) {
    return new BadFile(
        List.of(
            new Mistake(
                file.toString(), line, line > 0 ? "column 1" : "file", message, suggestion)));
  }
}
