package corewright.station.work;

import static java.nio.charset.StandardCharsets.UTF_8;

import corewright.reports.ledger.Expectations;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Verification;
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
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** A backup taken apart again: every hash held against, the ledger verified, then in its place. */
public final class RestoredShop {
  private RestoredShop() {}

  /**
   * Restores a backup into a new folder.
   *
   * @param heads as they were written down when the backup was made; may be empty
   * @throws Refused if the folder is there, or the backup is damaged
   */
  public static Verification restore(Path backup, Path folder, List<Head> heads) {
    if (Files.exists(folder)) {
      throw new Refused(
          folder + " is there already", "A backup is restored into a new folder: name one.");
    }
    Path whole = folder.toAbsolutePath();
    Path unfinished = whole.resolveSibling(whole.getFileName() + ".unfinished");
    Trees.remove(unfinished); // or what an attempt that was killed left would be in the shop
    try (ZipFile zip = open(backup)) {
      checkHashes(backup, zip);
      for (ZipEntry entry : zip.stream().toList()) {
        Path to = unfinished.resolve(entry.getName()).normalize();
        if (!to.startsWith(unfinished)) {
          throw damaged(backup, entry.getName() + " would lie outside the folder");
        }
        Files.createDirectories(to.resolveSibling(""));
        try (InputStream in = zip.getInputStream(entry)) {
          Files.copy(in, to, StandardCopyOption.REPLACE_EXISTING);
        }
      }
      Verification found =
          Ledger.verify(unfinished.resolve(Folders.LEDGER), new Expectations(List.of(), heads));
      if (!found.whole()) {
        throw damaged(backup, found.broken().get(0));
      }
      Files.move(unfinished, whole);
      return found;
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot restore " + backup + " to " + whole, refused);
    } finally {
      Trees.remove(unfinished);
    }
  }

  /** Reads a whole backup against the hashes in it. */
  static void check(Path backup) throws IOException {
    try (ZipFile zip = open(backup)) {
      checkHashes(backup, zip);
    }
  }

  private static ZipFile open(Path backup) throws IOException {
    if (!Files.isRegularFile(backup)) {
      throw new Refused("There is no backup " + backup, "Name the file that 'backup' wrote.");
    }
    try {
      return new ZipFile(backup.toFile());
    } catch (ZipException cut) {
      throw damaged(backup, String.valueOf(cut.getMessage()));
    }
  }

  private static void checkHashes(Path backup, ZipFile zip) throws IOException {
    ZipEntry list = zip.getEntry(Exporting.HASHES);
    if (list == null || zip.getEntry(Folders.LEDGER) == null) {
      throw damaged(backup, "it has no list of hashes, or no ledger");
    }
    Map<String, String> expected = new HashMap<>();
    try (InputStream in = zip.getInputStream(list)) {
      new String(in.readAllBytes(), UTF_8)
          .lines()
          .filter(line -> line.length() > 66)
          .forEach(line -> expected.put(line.substring(66), line.substring(0, 64)));
    }
    for (ZipEntry entry : zip.stream().toList()) {
      if (entry.getName().equals(Exporting.HASHES)) {
        continue;
      }
      String hash = expected.remove(entry.getName());
      if (hash == null || !hash.equals(sha256(backup, zip, entry))) {
        throw damaged(backup, entry.getName() + " is not as it was saved");
      }
    }
    if (!expected.isEmpty()) {
      throw damaged(backup, expected.keySet().iterator().next() + " is missing");
    }
  }

  private static String sha256(Path backup, ZipFile zip, ZipEntry entry) {
    try (DigestInputStream in =
        new DigestInputStream(zip.getInputStream(entry), MessageDigest.getInstance("SHA-256"))) {
      in.transferTo(OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(in.getMessageDigest().digest());
    } catch (IOException cut) {
      throw damaged(backup, entry.getName() + ": " + cut.getMessage());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static Refused damaged(Path backup, String what) {
    return new Refused(
        "The backup " + backup + " is damaged: " + what, "Take an older one, and keep this one.");
  }
}
