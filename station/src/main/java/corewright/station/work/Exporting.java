package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.bench.life.Never;
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

  /** Says what of the record is not in an export. */
  public static final String LEFT_OUT = "LEFT-OUT";

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
   * @param leftOut where the number of a vehicle stood and was left out
   */
  public record Exported(
      Path folder, int files, List<Head> heads, List<String> missing, List<String> leftOut) {}

  /**
   * Writes an export.
   *
   * @param folder a new folder
   * @param customer whose units alone are wanted; empty: the whole shop, which is the owner's
   * @param vehicles whether what looks like the number of a vehicle goes out too
   * @param who does it
   */
  public Exported write(Path folder, Optional<String> customer, boolean vehicles, String who) {
    if (Files.exists(folder)) {
      throw new Refused(folder + " is there already", "Name a new folder with --out.");
    }
    List<Head> heads = ledger.custody().heads();
    List<String> evidence =
        ledger.custody().evidence(customer); // refuses an unknown customer before writing
    List<String> missing = new ArrayList<>();
    try {
      Files.createDirectories(folder);
      List<String> leftOut =
          new ArrayList<>(ledger.custody().export(folder, customer, vehicles, who));
      Files.write(folder.resolve("HEADS"), heads.stream().map(Head::toString).toList());
      for (String path : evidence) {
        if (copy(folder, path, vehicles, missing)) {
          leftOut.add("file " + path + ": the record's hash is of the whole file");
        }
      }
      Files.write(folder.resolve(LEFT_OUT), said(leftOut, vehicles));
      return new Exported(folder, hashes(folder), heads, missing, leftOut);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write into " + folder, refused);
    }
  }

  private static List<String> said(List<String> leftOut, boolean vehicles) {
    if (vehicles) {
      return List.of("What looks like the number of a vehicle was given out too, as was asked.");
    }
    List<String> said = new ArrayList<>();
    said.add(
        leftOut.isEmpty()
            ? "Nothing was left out: no text looks like the number of a vehicle."
            : "What looks like the number of a vehicle was left out. "
                + Never.GIVE_OUT_A_VEHICLE.said(Never.GIVE_OUT_A_VEHICLE.remedy())
                + ".");
    said.addAll(leftOut);
    return said;
  }

  /** Whether something of it was left out. */
  private boolean copy(Path folder, String path, boolean vehicles, List<String> missing)
      throws IOException {
    Path from = folders.root().resolve(path).normalize();
    if (!from.startsWith(folders.root()) || !Files.isRegularFile(from)) {
      missing.add(path);
      return false;
    }
    Path to = folder.resolve(path).normalize();
    Files.createDirectories(to.resolveSibling(""));
    if (vehicles || !path.startsWith("files/")) {
      Files.copy(from, to);
      return false;
    }
    return WithoutVehicles.copy(from, to);
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
