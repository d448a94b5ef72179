package corewright.profiles;

import corewright.files.BadFile;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import corewright.files.KeptFiles;
import corewright.files.Mistake;
import corewright.files.Section;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The families and profiles of a folder: {@code <id>/family.json} with its profiles beside it.
 * Looked at when asked for, so that an edit counts from the next question on; what has not changed
 * is not checked again. For any thread.
 */
public final class Catalogue {
  private static final String FAMILY = "family.json";

  private final Path folder;
  private final JsonSchema familySchema;
  private final JsonSchema profileSchema;
  private final KeptFiles<Family> families = new KeptFiles<>();
  private final KeptFiles<Read> profiles = new KeptFiles<>();

  /** A profile with the family that it was checked against. */
  private record Read(Profile profile, Family family) {}

  private Catalogue(Path folder) {
    this.folder = folder;
    Path schemas = folder.resolveSibling("schemas");
    this.familySchema = JsonSchema.read(schemas.resolve("family.schema.json"));
    this.profileSchema = JsonSchema.read(schemas.resolve("profile.schema.json"));
  }

  /**
   * The catalogue in a folder; its schemas lie in {@code schemas} beside it.
   *
   * @throws BadFile if the folder or a schema is not there
   */
  public static Catalogue in(Path families) {
    if (!Files.isDirectory(families)) {
      throw refuse(families, "there is no such folder", "Name the folder that holds the families");
    }
    return new Catalogue(families);
  }

  /**
   * The catalogue of this installation, from the system property {@code corewright.home}.
   *
   * @throws IllegalStateException if the property is missing
   */
  public static Catalogue ofHome() {
    String home = System.getProperty("corewright.home", "");
    if (home.isEmpty()) {
      throw new IllegalStateException(
          "corewright.home is not set, so the families cannot be found. Start with ./corewright, or"
              + " set -Dcorewright.home to the folder that holds profiles/.");
    }
    return in(Path.of(home, "profiles", "families"));
  }

  /** Ids of all families, in order; those for tests among them. */
  public List<String> familyIds() {
    return list(folder, Files::isDirectory).stream()
        .filter(f -> Files.isRegularFile(f.resolve(FAMILY)))
        .map(f -> f.getFileName().toString())
        .toList();
  }

  /** The families that a core may be received as. */
  public List<Family> families() {
    return familyIds().stream().map(this::family).filter(f -> !f.testOnly()).toList();
  }

  /**
   * A family by its id.
   *
   * @throws BadFile if there is none, saying which are, or if its file has mistakes
   */
  public Family family(String id) {
    if (!familyIds().contains(id)) {
      throw refuse(folder, "there is no family '" + id + "'", Rules.meant(id, familyIds()));
    }
    return readFamily(folder.resolve(id).resolve(FAMILY));
  }

  /** Ids of a family's profiles, in order. */
  public List<String> profileIds(String family) {
    return list(folder.resolve(family), f -> f.toString().endsWith(".json")).stream()
        .map(f -> f.getFileName().toString().replaceAll("\\.json$", ""))
        .filter(id -> !id.equals("family"))
        .toList();
  }

  /**
   * A profile by its id, whichever family it is of.
   *
   * @throws BadFile if there is none, saying which are, or if its file has mistakes
   */
  public Profile profile(String id) {
    List<String> known = new ArrayList<>();
    for (String family : familyIds()) {
      List<String> profiles = profileIds(family);
      if (profiles.contains(id)) {
        return readProfile(folder.resolve(family).resolve(id + ".json"));
      }
      known.addAll(profiles);
    }
    throw refuse(folder, "there is no profile '" + id + "'", Rules.meant(id, known));
  }

  /** The profile that a record of this family is held against when none is named. */
  public Profile defaultProfile(Family family) {
    return profile(family.defaultProfile());
  }

  /**
   * A family from any file.
   *
   * @throws BadFile with every mistake in it
   */
  public Family readFamily(Path path) {
    return families.of(path, f -> hasDefault(f, path), this::family);
  }

  /** Whether the default profile is still there: that is no matter of the family's own file. */
  private static boolean hasDefault(Family family, Path path) {
    return Files.isRegularFile(path.resolveSibling(family.defaultProfile() + ".json"));
  }

  private Family family(JsonFile file) {
    Section section = Section.of(file);
    List<Mistake> mistakes = new ArrayList<>(familySchema.check(file));
    mistakes.addAll(FamilyRules.check(section));
    mistakes.addAll(PlaceRules.ofFamily(section, folder, file.origin()));
    JsonFile.refuse(mistakes);
    return FamilyFile.family(section, file.origin());
  }

  /**
   * A profile from any file; its family comes from this catalogue.
   *
   * @throws BadFile with every mistake in it
   */
  public Profile readProfile(Path path) {
    return profiles.of(path, this::sameFamily, this::profile).profile();
  }

  private boolean sameFamily(Read read) {
    String id = read.family().id();
    return familyIds().contains(id) && family(id).equals(read.family());
  }

  /** What a profile that may be used should still be known for; often empty. */
  public List<Mistake> cautions(Path path) {
    JsonFile file = JsonFile.read(path);
    return ProfileRules.cautions(new ProfileDraft(Section.of(file), profile(file).family()));
  }

  /** How much a file looks like a family, 0 to 1. */
  public double likenessToFamily(JsonFile file) {
    return familySchema.likeness(file);
  }

  /** How much a file looks like a profile, 0 to 1. */
  public double likenessToProfile(JsonFile file) {
    return profileSchema.likeness(file);
  }

  private Read profile(JsonFile file) {
    Section section = Section.of(file);
    List<Mistake> mistakes = new ArrayList<>(profileSchema.check(file));
    mistakes.addAll(PlaceRules.ofProfile(section, folder, file.origin()));
    String named = section.text("family");
    if (familyIds().contains(named)) {
      mistakes.addAll(ProfileRules.check(new ProfileDraft(section, family(named))));
    } else if (!named.isEmpty()) {
      mistakes.add(
          section.mistake(
              "family", "there is no family '" + named + "'", Rules.meant(named, familyIds())));
    }
    JsonFile.refuse(mistakes);
    Family family = family(named);
    return new Read(ProfileFile.profile(section, family, file.origin()), family);
  }

  private static List<Path> list(Path folder, Predicate<Path> which) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(which).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static BadFile refuse(Path place, String message, String suggestion) {
    return new BadFile(List.of(new Mistake(place.toString(), 0, "folder", message, suggestion)));
  }
}
