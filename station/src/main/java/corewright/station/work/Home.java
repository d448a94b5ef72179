package corewright.station.work;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where the files live that people edit: families, dialects, benches.
 *
 * @param folder the folder that holds {@code profiles/} and {@code fixtures/}
 */
public record Home(Path folder) {

  /** The folder named by the system property {@code corewright.home}, which the launcher sets. */
  public static Home fromSystem() {
    String named = System.getProperty("corewright.home", "");
    Path folder = Path.of(named.isEmpty() ? "." : named).toAbsolutePath().normalize();
    if (!Files.isDirectory(folder.resolve("profiles").resolve("families"))) {
      throw new Refused(
          "No profiles/families under " + folder,
          "Start with ./corewright, or set -Dcorewright.home to the folder that holds profiles/.");
    }
    return new Home(folder);
  }

  public Path families() {
    return folder.resolve("profiles").resolve("families");
  }

  public Path dialects() {
    return folder.resolve("fixtures").resolve("dialects");
  }

  public Path benches() {
    return folder.resolve("fixtures").resolve("benches");
  }
}
