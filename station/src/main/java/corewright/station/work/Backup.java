package corewright.station.work;

import static java.nio.charset.StandardCharsets.UTF_8;

import corewright.bench.capture.CaptureFile;
import corewright.reports.ledger.Expectations;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Verification;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * One file with the whole shop, made while everybody goes on working, and checked before it counts.
 * The ledger is copied first: whatever it names was on the disk before it was named. The signing
 * key is never in it.
 */
public final class Backup {
  /**
   * The record, and what the shop wrote itself: its benches with their calibration, its templates.
   */
  private static final List<String> FOLDERS =
      List.of("captures", "files", "documents", "charts", "benches", "templates");

  private final Ledger ledger;
  private final Folders folders;

  Backup(Ledger ledger, Folders folders) {
    this.ledger = ledger;
    this.folders = folders;
  }

  /** What was made; the heads are what to write down beside it. */
  public record Made(Path file, long bytes, Verification verification) {}

  /**
   * Makes a backup.
   *
   * @param file a new file; a half-made one never has this name
   * @param who does it; the owner, where the shop has accounts
   */
  public Made make(Path file, String who) {
    ledger.accounts().requireOwner(who, "make a backup of the whole shop");
    if (Files.exists(file)) {
      throw new Refused(file + " is there already", "Name a new file.");
    }
    Path whole = file.toAbsolutePath();
    Path unfinished = whole.resolveSibling(whole.getFileName() + ".unfinished");
    Path copy = whole.resolveSibling(whole.getFileName() + ".ledger");
    try {
      Files.createDirectories(whole.resolveSibling(""));
      Files.deleteIfExists(copy);
      ledger.custody().copyTo(copy);
      Verification found = Ledger.verify(copy, Expectations.NONE);
      if (!found.whole()) {
        throw new Refused(
            "The ledger is not as it was written: " + found.broken().get(0),
            "Keep it as it is, run 'verify', and compare with the last backup.");
      }
      write(unfinished, copy);
      RestoredShop.check(unfinished);
      Files.move(unfinished, whole, StandardCopyOption.ATOMIC_MOVE);
      return new Made(whole, Files.size(whole), found);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write " + whole, refused);
    } finally {
      delete(copy);
      delete(unfinished);
    }
  }

  private void write(Path to, Path ledgerCopy) throws IOException {
    try (OutputStream out = Files.newOutputStream(to);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(Deflater.BEST_SPEED);
      StringBuilder hashes = new StringBuilder();
      put(zip, hashes, Folders.LEDGER, ledgerCopy);
      for (String name : ShopFile.names(folders.root())) {
        Path file = folders.root().resolve(name);
        if (Files.isRegularFile(file)) {
          put(zip, hashes, name, file);
        }
      }
      for (String name : FOLDERS) {
        Path folder = folders.root().resolve(name);
        if (Files.isDirectory(folder)) {
          try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Backup::isFinished).sorted().toList()) {
              put(zip, hashes, folders.relative(file), file);
            }
          }
        }
      }
      zip.putNextEntry(new ZipEntry(Exporting.HASHES));
      zip.write(hashes.toString().getBytes(UTF_8));
      zip.closeEntry();
    }
  }

  /** A capture that is still growing belongs to a run that the copied ledger does not end. */
  private static boolean isFinished(Path file) {
    String name = file.toString();
    return Files.isRegularFile(file) && !name.endsWith(CaptureFile.RAW) && !name.endsWith(".begun");
  }

  private static void put(ZipOutputStream zip, StringBuilder hashes, String name, Path file)
      throws IOException {
    hashes.append(CaptureFile.sha256(file)).append("  ").append(name).append('\n');
    zip.putNextEntry(new ZipEntry(name));
    Files.copy(file, zip);
    zip.closeEntry();
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException kept) {
      // a left-over is named so that nobody takes it for a backup
    }
  }
}
