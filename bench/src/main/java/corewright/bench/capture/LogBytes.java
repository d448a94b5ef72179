package corewright.bench.capture;

import corewright.files.BadFile;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The bytes of a log: of the file itself, or of the one text that was mailed packed. */
final class LogBytes {
  /** Files beyond this are refused: nobody logs so much about one crank. */
  static final long LARGEST_BYTES = 1L << 30;

  private enum Wrapping {
    NONE,
    GZIP,
    ZIP
  }

  private final Path file;
  private final Wrapping wrapping;
  private final String entry;

  private LogBytes(Path file, Wrapping wrapping, String entry) {
    this.file = file;
    this.wrapping = wrapping;
    this.entry = entry;
  }

  static LogBytes of(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw LogFile.refuse(file, 0, "this is a folder", "Name the file itself");
      }
      if (!Files.isRegularFile(file)) {
        throw LogFile.refuse(file, 0, "there is no such file", "Check the name and the folder");
      }
      long size = Files.size(file);
      if (size == 0) {
        throw LogFile.refuse(file, 1, "the file is empty", "Ask for the recording again");
      }
      if (size > LARGEST_BYTES) {
        throw tooLarge(file);
      }
      byte[] head = head(file);
      refuseOtherKinds(file, head);
      if (head.length > 2 && (head[0] & 0xFF) == 0x1F && (head[1] & 0xFF) == 0x8B) {
        return new LogBytes(file, Wrapping.GZIP, "");
      }
      boolean zip = starts(head, 'P', 'K', 3, 4);
      return zip
          ? new LogBytes(file, Wrapping.ZIP, onlyText(file))
          : new LogBytes(file, Wrapping.NONE, "");
    } catch (IOException broken) {
      throw LogFile.refuse(
          file, 1, "it cannot be read (" + broken.getMessage() + ")", "Ask for it again");
    }
  }

  InputStream open() throws IOException {
    return switch (wrapping) {
      case NONE -> Files.newInputStream(file);
      case GZIP -> new GZIPInputStream(new BufferedInputStream(Files.newInputStream(file)));
      case ZIP -> new EntryStream(new ZipFile(file.toFile()), entry);
    };
  }

  String sha256() throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] chunk = new byte[1 << 16];
      for (int n = in.read(chunk); n > 0; n = in.read(chunk)) {
        digest.update(chunk, 0, n);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java platform has SHA-256", missing);
    }
  }

  static BadFile tooLarge(Path file) {
    return LogFile.refuse(
        file,
        1,
        "it has more than " + LARGEST_BYTES + " bytes",
        "Cut it to the minutes about the cranks");
  }

  private static byte[] head(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(16);
    }
  }

  /** Pictures, documents and workbooks that are sent in place of an export. */
  private static void refuseOtherKinds(Path file, byte[] head) {
    String kind =
        starts(head, 0x89, 'P', 'N', 'G') || starts(head, 0xFF, 0xD8, 0xFF)
            ? "a picture"
            : starts(head, '%', 'P', 'D', 'F')
                ? "a PDF document"
                : starts(head, 0xD0, 0xCF, 0x11, 0xE0)
                    ? "an old workbook or document"
                    : starts(head, 'S', 'Q', 'L', 'i') ? "a database" : "";
    if (!kind.isEmpty()) {
      throw LogFile.refuse(
          file, 1, "this is " + kind + ", not a text", "Export the recording as CSV");
    }
  }

  private static boolean starts(byte[] head, int... signs) {
    for (int i = 0; i < signs.length; i++) {
      if (i >= head.length || (head[i] & 0xFF) != signs[i]) {
        return false;
      }
    }
    return true;
  }

  private static String onlyText(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      List<String> texts = new ArrayList<>();
      for (ZipEntry e : Collections.list(zip.entries())) {
        String name = e.getName();
        if (name.equals("[Content_Types].xml") || name.equals("mimetype")) {
          throw LogFile.refuse(
              file, 1, "this is a workbook or document", "Save the sheet as CSV and send that");
        }
        String lower = name.toLowerCase(Locale.ROOT);
        boolean text = lower.endsWith(".csv") || lower.endsWith(".txt") || lower.endsWith(".log");
        if (text && !e.isDirectory() && !lower.startsWith("__macosx/")) {
          texts.add(name);
        }
      }
      if (texts.size() != 1) {
        throw LogFile.refuse(
            file,
            1,
            "there are " + texts.size() + " texts in this archive",
            "Unpack it and name the one log");
      }
      return texts.get(0);
    }
  }

  /** One entry of an archive; closing it closes the archive. */
  private static final class EntryStream extends java.io.FilterInputStream {
    private final ZipFile zip;

    EntryStream(ZipFile zip, String entry) throws IOException {
      super(zip.getInputStream(zip.getEntry(entry)));
      this.zip = zip;
    }

    @Override
    public void close() throws IOException {
      super.close();
      zip.close();
    }
  }
}
