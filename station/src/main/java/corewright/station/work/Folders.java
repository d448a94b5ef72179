package corewright.station.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where a shop keeps its record: one folder that can be copied whole.
 *
 * @param root holds {@code ledger.db}, {@code captures/}, {@code charts/} and {@code documents/};
 *     {@code ledger.url} in place of the first where benches share a database
 */
public record Folders(Path root) {
  static final String LEDGER = "ledger.db";
  private static final String SHARED = "ledger.url";

  /** Makes what is missing. */
  public static Folders at(Path root) {
    Folders folders = new Folders(root.toAbsolutePath().normalize());
    try {
      Files.createDirectories(folders.captures());
      Files.createDirectories(folders.charts());
      Files.createDirectories(folders.documents());
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot make " + folders.root, refused);
    }
    return folders;
  }

  /** The URL of the ledger: of the file in the folder, or of the database that is shared. */
  public String ledger() {
    Path shared = shared();
    if (Files.notExists(shared)) {
      return "jdbc:sqlite:" + root.resolve(LEDGER);
    }
    try {
      return Files.readString(shared).strip();
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot read " + shared, refused);
    }
  }

  /** The file whose one line is the URL of a shared ledger; not there where none is shared. */
  Path shared() {
    return root.resolve(SHARED);
  }

  public Path captures() {
    return root.resolve("captures");
  }

  /** Photographs and files by hash; made when the first one comes. */
  public Path files() {
    return root.resolve("files");
  }

  /** Descriptions of the shop's own benches, and its own dialects beside them; may be missing. */
  public Path benches() {
    return root.resolve("benches");
  }

  public Path charts() {
    return root.resolve("charts");
  }

  public Path documents() {
    return root.resolve("documents");
  }

  /** A path as the record keeps it: relative to the folder, with forward slashes. */
  public String relative(Path file) {
    return root.relativize(file.toAbsolutePath().normalize()).toString().replace('\\', '/');
  }
}
