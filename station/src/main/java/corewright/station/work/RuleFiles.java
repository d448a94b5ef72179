package corewright.station.work;

import corewright.files.BadFile;
import corewright.files.JsonFile;
import corewright.fixtures.describe.Descriptions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The files that hold the rules of the house: families with their profiles, benches, dialects. */
public final class RuleFiles {
  /** How the names of the shop's own begin. */
  public static final String OWN = "benches/";

  private final Home home;
  private final Folders shop;

  /**
   * @param shop whose own benches and dialects are among them
   */
  public RuleFiles(Home home, Folders shop) {
    this.home = home;
    this.shop = shop;
  }

  /**
   * Their names, relative to the folder of the program or, those of its own benches, of the shop,
   * with forward slashes; in order.
   */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    if (Files.isDirectory(shop.benches())) {
      list(shop.benches(), shop.root(), names);
    }
    for (Path root : List.of(home.families(), home.benches(), home.dialects())) {
      list(root, home.folder(), names);
    }
    return names;
  }

  private static void list(Path root, Path from, List<String> names) {
    try (Stream<Path> all = Files.walk(root, 2)) {
      all.filter(Files::isRegularFile)
          .filter(f -> String.valueOf(f.getFileName()).endsWith(".json"))
          .filter(f -> !String.valueOf(f.getFileName()).endsWith(".schema.json"))
          .map(f -> from.relativize(f).toString().replace('\\', '/'))
          .sorted()
          .forEach(names::add);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root, e);
    }
  }

  /** Bench descriptions among them, the shop's own first. */
  public List<Path> benches() {
    String benches = home.folder().relativize(home.benches()).toString().replace('\\', '/') + "/";
    return names().stream()
        .filter(
            name -> (name.startsWith(benches) && !name.contains("calibration")) || isBench(name))
        .map(this::path)
        .toList();
  }

  /** One of the shop's that is no dialect. */
  private boolean isBench(String name) {
    try {
      return name.startsWith(OWN)
          && Descriptions.likenessToDialect(JsonFile.read(path(name)))
              <= Descriptions.likenessToBench(JsonFile.read(path(name)));
    } catch (BadFile unread) {
      return true; // its mistakes are shown
    }
  }

  private Path path(String name) {
    return (name.startsWith(OWN) ? shop.root() : home.folder()).resolve(name);
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
    return new Checking(home).check(path(name));
  }
}
