package corewright.station.cli;

import corewright.station.work.Refused;

/** Who did something: a name, and not the answer to a question that was meant to come next. */
final class PersonName {
  private PersonName() {}

  /**
   * The name without blanks around it.
   *
   * @param option that gives it on the command line, as {@code --by}
   * @throws Refused if there is no letter in it
   */
  static String of(String given, String option) {
    if (given.codePoints().noneMatch(Character::isLetter)) {
      throw new Refused(
          "'" + given.strip() + "' is no name: it has no letter",
          "Give it with "
              + option
              + " NAME, above all where answers come from a pipe: the first line would be taken for"
              + " it.");
    }
    return given.strip();
  }
}
