package corewright.profiles;

import corewright.files.Mistake;
import corewright.files.Origin;
import corewright.files.Section;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What the files of a catalogue must keep among each other: they are found by their names. A file
 * that lies elsewhere may be called anything.
 */
final class PlaceRules {
  private PlaceRules() {}

  static List<Mistake> ofFamily(Section family, Path catalogue, Origin origin) {
    List<Mistake> found = new ArrayList<>();
    Path folder = Path.of(origin.path()).toAbsolutePath().normalize().getParent();
    if (folder == null || !lies(folder, catalogue)) {
      return found;
    }
    mustBe(family, "id", folder.getFileName().toString(), "its folder", found);
    String first = family.text("defaultProfile");
    if (!first.isEmpty() && !Files.isRegularFile(folder.resolve(first + ".json"))) {
      found.add(
          family.mistake(
              "defaultProfile",
              "there is no " + first + ".json beside this file",
              "Name one of the profiles in " + folder));
    }
    return found;
  }

  static List<Mistake> ofProfile(Section profile, Path catalogue, Origin origin) {
    List<Mistake> found = new ArrayList<>();
    Path file = Path.of(origin.path()).toAbsolutePath().normalize();
    Path folder = file.getParent();
    if (folder == null || !lies(folder, catalogue)) {
      return found;
    }
    String name = file.getFileName().toString().replaceAll("\\.json$", "");
    mustBe(profile, "id", name, "its file", found);
    mustBe(profile, "family", folder.getFileName().toString(), "its folder", found);
    return found;
  }

  private static boolean lies(Path folder, Path catalogue) {
    return catalogue.toAbsolutePath().normalize().equals(folder.getParent());
  }

  private static void mustBe(
      Section section, String key, String name, String of, List<Mistake> found) {
    String given = section.text(key);
    if (!given.isEmpty() && !given.equals(name)) {
      found.add(
          section.mistake(
              key,
              "'" + given + "' is not the name of " + of + ", '" + name + "'",
              "Write '" + name + "', or rename " + of));
    }
  }
}
