package corewright.station.work;

import corewright.reports.ledger.Attached;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Photographs that somebody hands in: only what begins as a picture does is kept, under its hash,
 * and nothing that its sender says about it is believed.
 */
public final class Photographs {
  /** Larger ones are refused. A phone's is 3 to 6 MB. */
  public static final long MOST_BYTES = 10_000_000;

  private static final int HEAD_BYTES = 12;

  private final FileStore files;
  private final Folders folders;

  Photographs(FileStore files, Folders folders) {
    this.files = files;
    this.folders = folders;
  }

  /** What a picture can be, told by its first bytes. */
  public enum Kind {
    JPEG("image/jpeg"),
    PNG("image/png"),
    WEBP("image/webp");

    private final String mediaType;

    Kind(String mediaType) {
      this.mediaType = mediaType;
    }

    public String mediaType() {
      return mediaType;
    }

    /**
     * What these bytes begin as; empty for anything else.
     *
     * @see "ITU-T T.81 B.1.1.3 (SOI, then a marker); ISO/IEC 15948 5.2 (PNG signature); RFC 9649
     *     2.4 (RIFF, size, WEBP)"
     */
    public static Optional<Kind> of(byte[] head) {
      if (begins(head, 0, 0xFF, 0xD8, 0xFF)) {
        return Optional.of(JPEG);
      }
      if (begins(head, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
        return Optional.of(PNG);
      }
      return begins(head, 0, 'R', 'I', 'F', 'F') && begins(head, 8, 'W', 'E', 'B', 'P')
          ? Optional.of(WEBP)
          : Optional.empty();
    }

    private static boolean begins(byte[] head, int at, int... with) {
      if (head.length < at + with.length) {
        return false;
      }
      for (int i = 0; i < with.length; i++) {
        if ((head[at + i] & 0xFF) != with[i]) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * A photograph that waits to be kept, in a file of the shop's own naming.
   *
   * @param shows what it shows, as {@code label}
   */
  public record Taken(Path file, String shows) implements AutoCloseable {
    @Override
    public void close() {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        throw new UncheckedIOException("cannot remove " + file, e);
      }
    }
  }

  /**
   * Looks at what somebody handed in.
   *
   * @throws Refused if it is too large or no picture; nothing of it stays then
   */
  public Taken take(InputStream in, String shows) {
    try {
      byte[] bytes = in.readNBytes((int) MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new Refused(
            "The photograph of the " + shows + " is larger than 10 MB", "Take a smaller one.");
      }
      Kind kind =
          Kind.of(Arrays.copyOf(bytes, Math.min(bytes.length, HEAD_BYTES)))
              .orElseThrow(
                  () ->
                      new Refused(
                          "What was given as a photograph of the " + shows + " is none",
                          "Give a JPEG, PNG or WebP picture; nothing was kept."));
      Path folder = Files.createDirectories(incoming());
      Path file = Files.createTempFile(folder, "photo", "." + kind.name().toLowerCase(Locale.ROOT));
      Files.write(file, bytes);
      return new Taken(file, shows);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot keep a photograph in " + incoming(), e);
    }
  }

  /** Keeps it with a unit, named by what it shows. */
  public Attached keep(String tag, Taken taken, String who) {
    return files.attach(tag, taken.file(), "photo", taken.shows(), who);
  }

  private Path incoming() {
    return folders.root().resolve("incoming");
  }
}
