package corewright.station.work;

import corewright.bench.capture.CaptureFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Photographs beside the ledger. Each is named by its hash, so that none can be exchanged. */
final class Photos {
  private final Folders folders;

  Photos(Folders folders) {
    this.folders = folders;
  }

  /**
   * Keeps a copy.
   *
   * @return the hash by which the record names it, SHA-256 in lower-case hex
   */
  String keep(Path photo) {
    if (!Files.isRegularFile(photo)) {
      throw new Refused("There is no photo " + photo, "Name a file that is there.");
    }
    String hash = CaptureFile.sha256(photo);
    String name = photo.getFileName().toString();
    String ending = name.contains(".") ? name.substring(name.lastIndexOf('.')) : "";
    Path kept = folders.photos().resolve(hash + ending.toLowerCase(Locale.ROOT));
    try {
      Files.createDirectories(folders.photos());
      if (!Files.exists(kept)) {
        Files.copy(photo, kept);
      }
      return hash;
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot keep a copy of " + photo, refused);
    }
  }
}
