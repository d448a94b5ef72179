package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import corewright.reports.ledger.Attached;
import corewright.reports.ledger.Ledger;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Photographs and files of units, each kept once under what its bytes hash to. */
public final class FileStore {
  private final Ledger ledger;
  private final Folders folders;

  FileStore(Ledger ledger, Folders folders) {
    this.ledger = ledger;
    this.folders = folders;
  }

  /** Keeps a copy, and notes in the ledger what it is. */
  public Attached attach(String tag, Path file, String kind, String note, String who) {
    if (!Files.isRegularFile(file)) {
      throw new Refused("There is no file " + file, "Name a photograph or file that exists.");
    }
    ledger.lives().standing(tag); // refuses what is not known before anything is copied
    Attached attached =
        new Attached(CaptureFile.sha256(file), String.valueOf(file.getFileName()), kind, note);
    Path kept = folders.files().resolve(attached.sha256());
    try {
      Files.createDirectories(folders.files());
      Files.copy(file, kept);
    } catch (FileAlreadyExistsException kindly) {
      // the same bytes are kept once
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot keep a copy of " + file, refused);
    }
    ledger.lives().attach(tag, attached, who);
    return attached;
  }
}
