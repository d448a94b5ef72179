package corewright.station.cli;

import corewright.station.work.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A folder that is not there yet, so that nothing is ever written over. */
final class NewFolder {
  private static final Path ROOT = Path.of("corewright-out");

  private NewFolder() {}

  /**
   * The named folder, or the first free one under {@code corewright-out}.
   *
   * @param kind as {@code demo}: gives {@code corewright-out/demo-1}, then {@code demo-2}
   */
  static Path of(Optional<Path> named, String kind) {
    if (named.isPresent()) {
      if (Files.exists(named.get())) {
        throw new Refused(
            named.get() + " is there already", "Name a new folder, or leave --out away.");
      }
      return named.get();
    }
    int number = 1;
    while (Files.exists(ROOT.resolve(kind + "-" + number))) {
      number++;
    }
    return ROOT.resolve(kind + "-" + number);
  }
}
