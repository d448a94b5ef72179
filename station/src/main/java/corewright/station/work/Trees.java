package corewright.station.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Folders with all that is in them. */
public final class Trees {
  private Trees() {}

  /** Removes a folder; what cannot be removed stays, for whoever comes next. */
  public static void remove(Path folder) {
    if (Files.notExists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    } catch (IOException left) {
      // whoever makes a folder of this name removes it first
    }
  }
}
