package corewright.station.cli;

import corewright.station.work.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A password as a person or a script gives it; never on the command line, where others see it. */
final class Password {
  private Password() {}

  /** The first line of the file; else the environment's; else nothing. */
  static char[] given(Optional<Path> file) {
    return given(file, "COREWRIGHT_PASSWORD");
  }

  /**
   * The same of another person.
   *
   * @param variable of the environment
   */
  static char[] given(Optional<Path> file, String variable) {
    if (file.isEmpty()) {
      String set = System.getenv(variable);
      return set == null ? new char[0] : set.toCharArray();
    }
    try {
      return Files.readString(file.get())
          .lines()
          .findFirst()
          .map(String::toCharArray)
          .orElse(new char[0]);
    } catch (IOException refused) {
      throw new Refused(
          "The password file " + file.get() + " cannot be read", "Name a file with one line.");
    }
  }
}
