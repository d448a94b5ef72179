package corewright.bench.port.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whether the library would really open the port that was named. For a path that does not exist it
 * quietly takes {@code /dev/} and the last part of it, which is another port.
 */
final class PortPath {

  private PortPath() {}

  /** Names such as {@code COM3} are not paths: the system alone knows them. */
  static boolean isPath(String port) {
    return port.contains("/");
  }

  static boolean exists(String port) {
    return !isPath(port) || Files.exists(Path.of(port));
  }

  /** Whether two names lead to the same device, symbolic links followed. */
  static boolean same(String asked, String taken) {
    if (!isPath(asked)) {
      return taken.endsWith(asked);
    }
    try {
      return Path.of(asked).toRealPath().equals(Path.of(taken).toRealPath());
    } catch (IOException gone) {
      return false;
    }
  }
}
