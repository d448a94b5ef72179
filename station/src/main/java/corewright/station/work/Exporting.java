package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Ledger;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Gets everything out: record as CSV, JSON and HDF5, captures as HDF5, all with their hashes. */
public final class Exporting {
  /** What {@code sha256sum -c} reads. */
  public static final String HASHES = "SHA256SUMS";

  private final Ledger ledger;
  private final Folders folders;

  Exporting(Ledger ledger, Folders folders) {
    this.ledger = ledger;
    this.folders = folders;
  }

  /**
   * What was written.
   *
   * @param missing captures and files that the record names and the disk does not have
   */
  public record Exported(Path folder, int files, List<Head> heads, List<String> missing) {}

  /**
   * Writes an export.
   *
   * @param folder a new folder
   * @param customer whose units alone are wanted; empty: the whole shop, which is the owner's
   * @param who does it
   */
  public Exported write(Path folder, Optional<String> customer, String who) {
    if (Files.exists(folder)) {
      throw new Refused(folder + " is there already", "Name a new folder with --out.");
    }
    List<Head> heads = ledger.custody().heads();
    List<String> evidence =
        ledger.custody().evidence(customer); // refuses an unknown customer before writing
    List<String> missing = new ArrayList<>();
    try {
      Files.createDirectories(folder);
      ledger.custody().export(folder, customer, who);
      Files.write(folder.resolve("HEADS"), heads.stream().map(Head::toString).toList());
      for (String path : evidence) {
        copy(folder, path, missing);
      }
      return new Exported(folder, hashes(folder), heads, missing);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write into " + folder, refused);
    }
  }

  private void copy(Path folder, String path, List<String> missing) throws IOException {
    Path from = folders.root().resolve(path).normalize();
    if (!from.startsWith(folders.root()) || !Files.isRegularFile(from)) {
      missing.add(path);
      return;
    }
    Path to = folder.resolve(path).normalize();
    Files.createDirectories(to.resolveSibling(""));
    Files.copy(from, to);
  }

  private static int hashes(Path folder) throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        lines.add(CaptureFile.sha256(file) + "  " + name);
      }
    }
    Files.write(folder.resolve(HASHES), lines);
    return lines.size();
  }
}
