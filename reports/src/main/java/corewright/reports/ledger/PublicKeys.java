package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;

/**
 * Public halves of signing keys: named, written, read, and asked whether they made a signature.
 *
 * @see "RFC 8032, Ed25519; RFC 8410, its keys in X.509; RFC 7468, their textual form"
 */
public final class PublicKeys {
  static final String ALGORITHM = "Ed25519";

  /** Set before what is signed, so that a signature of this ledger is one of nothing else. */
  private static final String CONTEXT = "corewright event 1\n";

  private static final String BEGIN = "-----BEGIN PUBLIC KEY-----";
  private static final String END = "-----END PUBLIC KEY-----";

  private PublicKeys() {}

  /** What names a key: the first 32 hex digits of the SHA-256 of its X.509 form. */
  public static String id(PublicKey key) {
    return Hashes.of(key.getEncoded()).substring(0, 32);
  }

  /** The key as a PEM file holds it, readable by every usual program. */
  public static String pem(PublicKey key) {
    return BEGIN + "\n" + base64(key) + "\n" + END + "\n";
  }

  /**
   * Reads a PEM file.
   *
   * @throws LedgerFault if there is none, or if it holds no Ed25519 public key
   */
  public static PublicKey read(Path file) {
    try {
      String text = Files.readString(file);
      int from = text.indexOf(BEGIN);
      int to = text.indexOf(END);
      if (from < 0 || to < from) {
        throw new IllegalArgumentException("no PUBLIC KEY block");
      }
      return ofBase64(text.substring(from + BEGIN.length(), to).replaceAll("\\s", ""));
    } catch (IOException | IllegalArgumentException e) {
      throw noKey(file, e);
    }
  }

  static String base64(PublicKey key) {
    return Base64.getEncoder().encodeToString(key.getEncoded());
  }

  /**
   * @throws IllegalArgumentException if it is no such key
   */
  static PublicKey ofBase64(String text) {
    try {
      return KeyFactory.getInstance(ALGORITHM)
          .generatePublic(new X509EncodedKeySpec(Base64.getDecoder().decode(text)));
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("not an Ed25519 public key", e);
    }
  }

  /** Whether {@code signature}, hex, was made over {@code hash} with the other half of the key. */
  static boolean signed(PublicKey key, String hash, String signature) {
    try {
      return verifies(key, signedText(hash), HexFormat.of().parseHex(signature));
    } catch (IllegalArgumentException noHex) {
      return false;
    }
  }

  static boolean verifies(PublicKey key, byte[] message, byte[] signature) {
    try {
      Signature check = Signature.getInstance(ALGORITHM);
      check.initVerify(key);
      check.update(message);
      return check.verify(signature);
    } catch (GeneralSecurityException malformed) {
      return false;
    }
  }

  /** The bytes that are signed for an event of this hash. */
  static byte[] signedText(String hash) {
    return (CONTEXT + hash).getBytes(US_ASCII);
  }

  static boolean isSignedText(byte[] message) {
    byte[] context = CONTEXT.getBytes(US_ASCII);
    return message.length >= context.length
        && Arrays.equals(message, 0, context.length, context, 0, context.length);
  }

  private static LedgerFault noKey(Path file, Throwable cause) {
    return new LedgerFault(
        "No public key can be read from " + file,
        "Give the file that 'key --out' has written: PEM, Ed25519",
        cause);
  }
}
