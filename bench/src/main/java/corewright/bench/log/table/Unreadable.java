package corewright.bench.log.table;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.util.List;

/** What cannot be read, with its place and what to do. */
final class Unreadable {
  private Unreadable() {}

  /**
   * A refusal.
   *
   * @param line counted from 1
   * @param column counted from 1
   */
  static BadFile at(String file, int line, int column, String message, String remedy) {
    return new BadFile(List.of(new Mistake(file, line, "column " + column, message, remedy)));
  }
}
