package corewright.station.cli;

import corewright.station.work.Refused;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a disk would not do, as a refusal with a remedy. A folder that may not be written to is a
 * thing of the place where the program runs, and no fault of the program.
 */
final class DiskWords {
  private static final String ALLOW =
      "Allow whoever runs this to read and write there, or name another place.";
  private static final String ELSEWHERE = "Name another place.";
  private static final Case UNKNOWN =
      new Case("", "", "Check that the place is there and may be written to, and that it works.");

  /** By what Java or the system says of it; the first that fits. */
  private static final List<Case> CASES =
      List.of(
          new Case("No space left", "the disk is full", "Make room on it and try again."),
          new Case("Disk quota", "no more room is granted", "Make room and try again."),
          new Case("Read-only", "it can only be read from", ELSEWHERE),
          new Case("AccessDenied", "that is not allowed", ALLOW),
          new Case("Permission denied", "that is not allowed", ALLOW),
          new Case("Is a directory", "it is a folder", "Name a file."),
          new Case("Not a directory", "a file is where a folder should be", ELSEWHERE),
          new Case("AlreadyExists", "a file of that name is there", ELSEWHERE),
          new Case("NoSuchFile", "it or its folder is not there", "Check both names."),
          new Case("No such file", "it or its folder is not there", "Check both names."),
          new Case("name too long", "its name is too long", "Give it a shorter name."));

  /**
   * @param said what stands in the exception
   * @param means the same in words
   */
  private record Case(String said, String means, String remedy) {}

  private DiskWords() {}

  /** The refusal; empty where it was no disk that refused. */
  static Optional<Refused> of(Exception fault) {
    if (fault instanceof UncheckedIOException unchecked) {
      IOException cause = Objects.requireNonNull(unchecked.getCause());
      String doing = String.valueOf(unchecked.getMessage());
      return Optional.of(refused(doing.equals(cause.toString()) ? "" : doing, cause));
    }
    return fault instanceof IOException io ? Optional.of(refused("", io)) : Optional.empty();
  }

  private static Refused refused(String doing, IOException cause) {
    String said = cause.toString();
    Case known = CASES.stream().filter(c -> said.contains(c.said)).findFirst().orElse(UNKNOWN);
    String place = known.equals(UNKNOWN) ? "" : place(cause);
    String what = known.equals(UNKNOWN) ? String.valueOf(cause.getMessage()) : known.means;
    return new Refused(begun(doing, place) + what, known.remedy);
  }

  private static String begun(String doing, String place) {
    if (doing.isEmpty()) {
      return place.isEmpty() ? "" : place + ": ";
    }
    String where = doing.contains(place) ? "" : " (" + place + ")";
    return Character.toUpperCase(doing.charAt(0)) + doing.substring(1) + where + ": ";
  }

  /** The file that it is about, or nothing. */
  private static String place(IOException cause) {
    if (cause instanceof FileSystemException file) {
      return Objects.requireNonNullElse(file.getFile(), "");
    }
    String said = String.valueOf(cause.getMessage());
    return cause instanceof FileNotFoundException && said.contains(" (")
        ? said.substring(0, said.indexOf(" ("))
        : "";
  }
}
