package corewright.files;

/**
 * What is wrong with a file, said so that a person can mend it.
 *
 * @param file as given
 * @param line counted from 1; 0 where the whole file is meant
 * @param where JSON pointer or name of the place
 * @param message what is wrong there
 * @param suggestion what to do
 */
public record Mistake(String file, int line, String where, String message, String suggestion) {

  @Override
  public String toString() {
    String place = line > 0 ? ":" + line + ": " + where : where.equals("file") ? "" : ": " + where;
    return file + place + ": " + message + ". " + suggestion;
  }
}
