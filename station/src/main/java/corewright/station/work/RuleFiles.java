package corewright.station.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The files that hold the rules of the house: families with their profiles, benches, dialects. */
public final class RuleFiles {
  private final Home home;

  public RuleFiles(Home home) {
    this.home = home;
  }

  /** Their names, relative to the folder of the program, with forward slashes; in order. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (Path root : List.of(home.families(), home.benches(), home.dialects())) {
      try (Stream<Path> all = Files.walk(root, 2)) {
        all.filter(Files::isRegularFile)
            .filter(f -> String.valueOf(f.getFileName()).endsWith(".json"))
            .filter(f -> !String.valueOf(f.getFileName()).endsWith(".schema.json"))
            .map(f -> home.folder().relativize(f).toString().replace('\\', '/'))
            .sorted()
            .forEach(names::add);
      } catch (IOException e) {
        throw new UncheckedIOException("cannot list " + root, e);
      }
    }
    return names;
  }

  /** Bench descriptions among them. */
  public List<Path> benches() {
    String benches = home.folder().relativize(home.benches()).toString().replace('\\', '/') + "/";
    return names().stream()
        .filter(name -> name.startsWith(benches) && !name.contains("calibration"))
        .map(home.folder()::resolve)
        .toList();
  }

  /**
   * Checks one of them.
   *
   * @param name as {@link #names} has it; no other is opened
   * @throws corewright.files.BadFile with every mistake
   */
  public Checking.Good check(String name) {
    if (!names().contains(name)) {
      throw new Refused("There is no such file of rules", "Choose one from the list.");
    }
    return new Checking(home).check(home.folder().resolve(name));
  }
}
