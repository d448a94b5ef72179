package corewright.station.work;

import corewright.reports.ledger.Expectations;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.PublicKeys;
import corewright.reports.ledger.Verification;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Checks a ledger against its own chains, and against what was kept outside of it. */
public final class Verifying {
  private Verifying() {}

  /**
   * Reads every event; changes nothing in or beside the file.
   *
   * @param ledger the file, the shop's folder, or the URL of a shared ledger
   * @param keys files with the shop's public keys, from elsewhere; empty: those the ledger names
   * @param heads as documents, exports and backups print them
   */
  public static Verification verify(String ledger, List<Path> keys, List<String> heads) {
    return Ledger.verify(
        url(ledger),
        new Expectations(
            keys.stream().map(PublicKeys::read).toList(), heads.stream().map(Head::of).toList()));
  }

  private static String url(String ledger) {
    if (ledger.startsWith("jdbc:")) {
      return ledger;
    }
    Path path = Path.of(ledger);
    return Files.isDirectory(path) ? new Folders(path).ledger() : "jdbc:sqlite:" + path;
  }
}
