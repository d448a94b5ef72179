package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.PublicKey;
import java.util.Base64;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SigningTest {
  /** RFC 8410, 4: what stands before the 32 bytes of an Ed25519 key in its X.509 form. */
  private static final String X509 = "302a300506032b6570032100";

  @TempDir private Path folder;

  /** RFC 8032, 7.1, tests 1 and 2 (from memory; that they verify is what proves them). */
  @ParameterizedTest
  @CsvSource({
    "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a, '',"
        + " e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c, 72,"
        + " 92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"
  })
  void publishedSignaturesAreAcceptedAndNothingElse(String key, String message, String signature) {
    PublicKey open =
        PublicKeys.ofBase64(
            Base64.getEncoder().encodeToString(HexFormat.of().parseHex(X509 + key)));
    byte[] text = HexFormat.of().parseHex(message);
    byte[] made = HexFormat.of().parseHex(signature);
    assertTrue(PublicKeys.verifies(open, text, made));
    made[40] ^= 1;
    assertFalse(PublicKeys.verifies(open, text, made));
  }

  @Test
  void theKeyIsMadeOnceAndItsOwnerAloneMayReadIt() throws Exception {
    KeyFolder keys = new KeyFolder(folder);
    SigningKey made = keys.key();
    assertEquals(made.id(), new KeyFolder(folder).key().id());
    assertEquals(
        "rw-------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(keys.secretFile())));
    assertEquals(
        "rwx------",
        PosixFilePermissions.toString(
            Files.getPosixFilePermissions(keys.secretFile().resolveSibling(""))));
    assertEquals(made.publicKey(), PublicKeys.read(keys.publicFile()));
    assertNotEquals(made.id(), new KeyFolder(folder.resolve("other")).key().id());
  }

  @Test
  void aKeyThatOthersMayReadIsRefused() throws Exception {
    KeyFolder keys = new KeyFolder(folder);
    keys.key();
    Files.setPosixFilePermissions(keys.secretFile(), PosixFilePermissions.fromString("rw-r-----"));
    LedgerFault fault = assertThrows(LedgerFault.class, keys::key);
    assertTrue(fault.getMessage().contains("chmod 600"), fault.getMessage());
  }

  @Test
  void aDamagedKeyIsRefused() throws Exception {
    KeyFolder keys = new KeyFolder(folder);
    SigningKey key = keys.key();
    String other = SigningKey.make().text();
    String mixed = key.text().lines().toList().get(0) + "\n" + other.lines().toList().get(1);
    Files.writeString(keys.secretFile(), mixed);
    LedgerFault fault = assertThrows(LedgerFault.class, keys::key);
    assertTrue(fault.getMessage().contains("do not belong together"), fault.getMessage());
    Files.writeString(keys.secretFile(), "");
    assertThrows(LedgerFault.class, keys::key);
  }

  @Test
  void aFileThatIsNoPublicKeyIsRefused() throws Exception {
    Path file = Files.writeString(folder.resolve("x.pem"), "-----BEGIN PUBLIC KEY-----");
    assertThrows(LedgerFault.class, () -> PublicKeys.read(file));
    assertThrows(LedgerFault.class, () -> PublicKeys.read(folder.resolve("none.pem")));
  }

  @Test
  void aHeadIsReadAsItIsPrinted() {
    Head head = new Head("bench:1", 1042, "9f86d081884c7d65".repeat(4));
    assertEquals("bench:1:1042:9f86d081884c7d65", head.printed());
    assertEquals(head, Head.of(head.toString()));
    assertEquals("9f86d081884c7d65", Head.of(" " + head.printed() + "\n").hash());
    for (String none : new String[] {"", "bench-1", "bench-1:x:9f86d081884c7d65", "b:1:9f86"}) {
      assertThrows(LedgerFault.class, () -> Head.of(none), none);
    }
  }
}
