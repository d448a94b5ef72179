package corewright.station.work;

import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Verification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;

/** The ledger goes from its file into a database that several benches share. */
public final class Sharing {
  private final Ledger ledger;
  private final Folders folders;

  Sharing(Ledger ledger, Folders folders) {
    this.ledger = ledger;
    this.folders = folders;
  }

  /**
   * Moves the ledger, and from then on opens it there. The file stays where it is and refuses every
   * further event.
   *
   * @param url as {@code jdbc:postgresql://host/database?user=name}
   * @return what the moved ledger was found to be
   * @throws Refused if a password stands in the URL, where everybody could read it
   */
  public Verification share(String url, String who) {
    if (url.toLowerCase(Locale.ROOT).contains("password=")) {
      throw new Refused(
          "There is a password in the URL",
          "Put it into the file .pgpass in the home of everybody who works with the ledger.");
    }
    Verification found = ledger.custody().moveTo(url, who);
    Path unfinished = folders.shared().resolveSibling("ledger.url.unfinished");
    try {
      Files.writeString(unfinished, url + "\n");
      Files.move(unfinished, folders.shared(), StandardCopyOption.ATOMIC_MOVE);
      return found;
    } catch (IOException refused) {
      throw new UncheckedIOException(
          "the ledger has moved, but this could not be noted: write the one line "
              + url
              + " into "
              + folders.shared(),
          refused);
    }
  }
}
