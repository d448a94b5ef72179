package corewright.profiles;

import corewright.files.JsonFile;
import corewright.files.Origin;
import corewright.files.Section;

/**
 * Families and profiles out of the texts that a run kept. They were checked before the run, and a
 * rule that is newer than the run must not make its record unreadable: nothing is checked again.
 */
public final class KeptTexts {
  private KeptTexts() {}

  /**
   * The family as it was.
   *
   * @throws corewright.files.BadFile if the text is not JSON
   */
  public static Family family(Origin origin) {
    return FamilyFile.family(Section.of(JsonFile.of(origin)), origin);
  }

  /** The profile as it was, with the family as it was. */
  public static Profile profile(Origin origin, Family family) {
    return ProfileFile.profile(Section.of(JsonFile.of(origin)), family, origin);
  }
}
