package corewright.reports.ledger;

import java.nio.file.Path;

/** Where a ledger is kept. */
final class Urls {
  static final String SQLITE = "jdbc:sqlite:";

  private Urls() {}

  static String of(Path file) {
    return SQLITE + file;
  }
}
