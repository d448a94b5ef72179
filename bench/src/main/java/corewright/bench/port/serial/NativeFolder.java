package corewright.bench.port.serial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * Where the serial library unpacks its native part. Left alone it takes one folder for all programs
 * and all users of the computer: two programs that start together can crash each other, and anyone
 * can put another library there. So each process gets a new folder that only its user can read.
 */
final class NativeFolder {
  /** The library puts this name between its folder of temporary files and its version. */
  private static final String NAME = "fazecast.jSerialComm.appid";

  private NativeFolder() {}

  /** Lets {@code load} load the library from a folder of its own. */
  static void around(Runnable load) {
    if (System.getProperty(NAME) != null) {
      load.run(); // whoever started the process has chosen
      return;
    }
    try {
      Path folder = Files.createTempDirectory("corewright-serial-"); // only its user may enter
      System.setProperty(NAME, "../" + folder.getFileName());
      try {
        load.run();
      } finally {
        discard(folder);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Once loaded the file is not needed any more, except on Windows, where it cannot be deleted. */
  private static void discard(Path folder) throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
        if (!path.toFile().delete()) {
          path.toFile().deleteOnExit();
        }
      }
    }
  }
}
