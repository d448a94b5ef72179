package corewright.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Reads the small text files that people edit. */
public final class TextFile {
  /** A description that is larger than this is not one: a record was named by mistake. */
  static final long LARGEST_BYTES = 4L << 20;

  private TextFile() {}

  /**
   * The text of a UTF-8 file with the hash of its bytes. A byte order mark is left out of the text.
   *
   * @throws BadFile if there is no such file, or it is too large, or not UTF-8
   */
  public static Origin read(Path file) {
    return text(file, bytes(file));
  }

  /** The text of bytes that were read from a file. */
  static Origin text(Path file, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    boolean bad = decoder.decode(in, out, true).isError();
    String text = out.flip().toString();
    if (bad) {
      int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
      throw refuse(
          file,
          line,
          String.format("byte %d (0x%02X) is not UTF-8", in.position(), bytes[in.position()]),
          "Save the file as UTF-8");
    }
    return new Origin(
        file.toString(), sha256(bytes), text.startsWith("\uFEFF") ? text.substring(1) : text);
  }

  /** What stands in a file now. */
  static byte[] bytes(Path file) {
    try {
      if (!Files.exists(file)) {
        throw refuse(file, 0, "there is no such file", "Check the name and the folder");
      }
      if (!Files.isRegularFile(file)) {
        throw refuse(file, 0, "this is not a file", "Name the file itself");
      }
      long size = Files.size(file);
      if (size > LARGEST_BYTES) {
        throw refuse(
            file,
            0,
            "it has " + size + " bytes, and a description has at most " + LARGEST_BYTES,
            "Name the description, not a recorded waveform");
      }
      return Files.readAllBytes(file);
    } catch (IOException broken) {
      throw refuse(
          file, 0, "it cannot be read (" + broken.getMessage() + ")", "Check its permissions");
    }
  }

  private static BadFile refuse(Path file, int line, String message, String suggestion) {
    return new BadFile(List.of(new Mistake(file.toString(), line, "file", message, suggestion)));
  }

  /** SHA-256 of these bytes, lower-case hex. */
  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java platform has SHA-256", missing);
    }
  }
}
