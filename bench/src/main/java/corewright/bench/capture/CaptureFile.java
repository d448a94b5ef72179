package corewright.bench.capture;

import corewright.files.BadFile;
import corewright.files.Mistake;
import io.jhdf.exceptions.HdfException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;

/** Captures on disk: raw while a run goes on, sealed into HDF5 afterwards. */
public final class CaptureFile {
  /** Ending of a raw capture. */
  public static final String RAW = ".raw";

  /** Ending of a sealed one. */
  public static final String SEALED = ".h5";

  /** HDF5 file format specification 3.0, II.A: the signature of the superblock. */
  private static final byte[] HDF_MARK = {(byte) 0x89, 'H', 'D', 'F', '\r', '\n', 0x1A, '\n'};

  private CaptureFile() {}

  /** Whether the file begins as one of the two kinds, whatever its name is. */
  public static boolean isCapture(Path path) {
    byte[] mark = mark(path);
    return Arrays.equals(mark, HDF_MARK) || Arrays.equals(mark, RawFormat.MARK);
  }

  /**
   * Reads either kind, all of it: every sample lies on the heap then, two bytes each.
   *
   * @throws BadFile if it is neither, or damaged
   */
  public static StoredCapture read(Path path) {
    WholeCapture whole = new WholeCapture();
    return hand(path, whole, ReadProgress.UNSEEN, whole::stored);
  }

  /**
   * Reads what was sampled while the profile's holds ran; memory does not grow with the file.
   *
   * @param progress told how far a long file has been read
   * @throws BadFile if it is no capture, or damaged
   */
  static HeldCapture holds(Path path, ReadProgress progress) {
    JoinedSegments joined = new JoinedSegments("HOLD"::equals);
    return hand(
        path,
        joined,
        progress,
        () -> new HeldCapture(joined.header(), joined.capture(), joined.end()));
  }

  /** Hands a file on in parts, and says in the same words what was wrong with it. */
  private static <T> T hand(
      Path path, CaptureParts parts, ReadProgress progress, Supplier<T> result) {
    try {
      if (Arrays.equals(mark(path), HDF_MARK)) {
        HdfReader.read(path, parts, progress);
      } else {
        RawReader.read(path, parts, progress);
      }
      return result.get();
    } catch (IOException unreadable) {
      throw bad(path, "it cannot be read");
    } catch (UncheckedIOException unreadable) {
      throw bad(path, "it cannot be read: " + unreadable.getMessage());
    } catch (IllegalArgumentException | HdfException | ClassCastException damaged) {
      throw bad(path, String.valueOf(damaged.getMessage()));
    }
  }

  /**
   * Seals a capture: writes it as HDF5. The file appears whole or not at all.
   *
   * @return hash of the sealed file's bytes, lower-case hex
   */
  public static String seal(StoredCapture capture, Path sealed) {
    try {
      Path begun = sealed.resolveSibling(sealed.getFileName() + ".part");
      Files.deleteIfExists(begun);
      HdfWriter.write(capture, begun);
      Files.move(begun, sealed, StandardCopyOption.REPLACE_EXISTING);
      return sha256(sealed);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Hash of a file's bytes, lower-case hex. */
  public static String sha256(Path path) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      try (InputStream in = new DigestInputStream(Files.newInputStream(path), digest)) {
        in.transferTo(OutputStream.nullOutputStream());
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java platform has SHA-256", missing);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static byte[] mark(Path path) {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(HDF_MARK.length);
    } catch (IOException unreadable) {
      return new byte[0];
    }
  }

  private static BadFile bad(Path path, String message) {
    return new BadFile(
        List.of(
            new Mistake(
                path.toString(),
                0,
                "capture",
                message,
                "Name a capture that a run has left, or a CSV record.")));
  }
}
