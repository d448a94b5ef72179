package corewright.reports.ledger;

import java.nio.file.Path;

/** Where a ledger is kept: the one URL that decides between a file and a shared database. */
final class Urls {
  static final String SQLITE = "jdbc:sqlite:";
  static final String POSTGRESQL = "jdbc:postgresql:";

  private Urls() {}

  static String of(Path file) {
    return SQLITE + file;
  }

  /**
   * What keeps the ledger of a URL.
   *
   * @throws LedgerFault if a ledger cannot be kept there
   */
  static Store store(String url) {
    if (url.startsWith(SQLITE)) {
      return SqliteStore.of(url);
    }
    if (url.startsWith(POSTGRESQL)) {
      return new PostgresStore(url);
    }
    throw new LedgerFault(
        "A ledger cannot be kept at '" + url + "'",
        "Give a file, or " + SQLITE + "FILE, or " + POSTGRESQL + "//HOST/DATABASE?user=NAME");
  }
}
