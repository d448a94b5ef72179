package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.reports.ledger.Expectations;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.KeptFile;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.PublicKeys;
import corewright.reports.ledger.Verification;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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

  /**
   * How the files in a shop's folder are.
   *
   * @param checked how many are as the record says
   * @param changed those that are not
   * @param missing captures, photographs and files that are not there
   * @param removed documents that are not there; they can be written again
   */
  public record OnDisk(
      int checked, List<KeptFile> changed, List<KeptFile> missing, List<KeptFile> removed) {
    /** Whether everything that cannot be made again is there and as it was. */
    public boolean whole() {
      return changed.isEmpty() && missing.isEmpty();
    }
  }

  /**
   * Holds every file that the record names against its hash.
   *
   * @param shop the shop's folder
   * @throws Refused if it is none
   */
  public static OnDisk files(String shop) {
    Path root = Path.of(shop);
    if (shop.startsWith("jdbc:") || !Files.isDirectory(root)) {
      throw new Refused(shop + " is not the folder of a shop", "Name it; the files lie in it.");
    }
    List<KeptFile> good = new ArrayList<>();
    List<KeptFile> changed = new ArrayList<>();
    List<KeptFile> missing = new ArrayList<>();
    List<KeptFile> removed = new ArrayList<>();
    for (KeptFile kept : Ledger.files(url(shop))) {
      Path file = root.resolve(kept.path());
      if (Files.isRegularFile(file)) {
        (CaptureFile.sha256(file).equals(kept.sha256()) ? good : changed).add(kept);
      } else {
        (kept.path().startsWith("documents/") ? removed : missing).add(kept);
      }
    }
    return new OnDisk(good.size(), changed, missing, removed);
  }

  private static String url(String ledger) {
    if (ledger.startsWith("jdbc:")) {
      return ledger;
    }
    Path path = Path.of(ledger);
    return Files.isDirectory(path) ? new Folders(path).ledger() : "jdbc:sqlite:" + path;
  }
}
