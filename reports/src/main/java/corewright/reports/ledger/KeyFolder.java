package corewright.reports.ledger;

import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Where a shop's signing key lies: a folder beside the ledger that its owner alone may enter. The
 * public half lies beside it as {@code signing.pub}, to be given to everybody.
 */
public final class KeyFolder {
  private static final Set<PosixFilePermission> OWNER_ENTERS =
      PosixFilePermissions.fromString("rwx------");
  private static final Set<PosixFilePermission> OWNER_READS =
      PosixFilePermissions.fromString("rw-------");

  private final Path folder;

  /**
   * @param shop the folder that holds the ledger
   */
  public KeyFolder(Path shop) {
    this.folder = shop.resolve("keys");
  }

  /** The private half. Whoever has it can sign as this shop: it belongs in no copy and no mail. */
  public Path secretFile() {
    return folder.resolve("signing.key");
  }

  /** The public half, PEM. */
  public Path publicFile() {
    return folder.resolve("signing.pub");
  }

  /**
   * The shop's key; made where there is none.
   *
   * @throws LedgerFault if others than the owner may read it, or if it cannot be read or made
   */
  public SigningKey key() {
    try {
      if (!Files.exists(secretFile())) {
        make();
      }
      refuseIfOthersRead();
      return SigningKey.ofText(Files.readString(secretFile()));
    } catch (IllegalArgumentException broken) {
      throw new LedgerFault(
          "The signing key " + secretFile() + " is damaged: " + broken.getMessage(),
          "Restore it from your copy, or move it away to begin with a new one",
          broken);
    } catch (IOException refused) {
      throw new LedgerFault(
          "The signing key " + secretFile() + " can be neither read nor made: " + refused,
          "Allow this user to write to the shop's folder",
          refused);
    }
  }

  /** Under a lock, so that two programs that start together get one key; see {@link Database}. */
  private void make() throws IOException {
    synchronized (KeyFolder.class) {
      makeAlone();
    }
  }

  private void makeAlone() throws IOException {
    Files.createDirectories(folder);
    permit(folder, OWNER_ENTERS);
    try (FileChannel channel =
            FileChannel.open(
                folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      if (held.isValid() && !Files.exists(secretFile())) {
        SigningKey key = SigningKey.make();
        Path unfinished = folder.resolve("signing.new");
        Files.deleteIfExists(unfinished);
        Files.createFile(unfinished);
        permit(unfinished, OWNER_READS);
        Files.writeString(unfinished, key.text());
        Files.writeString(publicFile(), PublicKeys.pem(key.publicKey()));
        Files.move(unfinished, secretFile(), StandardCopyOption.ATOMIC_MOVE);
      }
    }
  }

  private void refuseIfOthersRead() throws IOException {
    if (!hasPermissions(folder)) {
      return;
    }
    Set<PosixFilePermission> allowed = Files.getPosixFilePermissions(secretFile());
    if (!OWNER_READS.containsAll(allowed)) {
      throw new LedgerFault(
          "Others than its owner may read the signing key " + secretFile(),
          "Close it with 'chmod 600 "
              + secretFile()
              + "'; if others may have read it, make a new one");
    }
  }

  private static void permit(Path path, Set<PosixFilePermission> permissions) throws IOException {
    if (hasPermissions(path)) {
      Files.setPosixFilePermissions(path, permissions);
    } else { // Windows: what the owner's account grants to others is taken away as far as Java can
      File file = path.toFile();
      boolean closed = file.setReadable(false, false) && file.setReadable(true, true);
      if (!closed) {
        throw new IOException("cannot keep others from reading " + path);
      }
    }
  }

  private static boolean hasPermissions(Path path) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix");
  }
}
