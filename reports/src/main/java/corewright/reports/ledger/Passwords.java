package corewright.reports.ledger;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * Passwords as salted slow hashes.
 *
 * @see "RFC 8018, 5.2 (PBKDF2), with HMAC-SHA-256"
 */
final class Passwords {
  /** So that one guess costs about half a second of a processor. */
  static final int ITERATIONS = 600_000;

  /** Set by the build for its tests, which sign in a few hundred times; by nothing else. */
  static final String OF_TESTS = "corewright.tests.passwordIterations";

  static final int LEAST_CHARACTERS = 8;

  private static final int SALT_BYTES = 16;
  private static final int HASH_BITS = 256;
  private static final SecureRandom RANDOM = new SecureRandom();

  private Passwords() {}

  static String salt() {
    byte[] salt = new byte[SALT_BYTES];
    RANDOM.nextBytes(salt);
    return HexFormat.of().formatHex(salt);
  }

  /** For a password that is made now; each account keeps its own. */
  static int iterations() {
    return Integer.getInteger(OF_TESTS, ITERATIONS);
  }

  /** The hash as hex. */
  static String hash(char[] password, String salt, int iterations) {
    return HexFormat.of()
        .formatHex(derive(password, HexFormat.of().parseHex(salt), iterations, HASH_BITS));
  }

  /** Whether it is the password, in a time that does not tell how much of it is right. */
  static boolean fits(char[] password, String salt, int iterations, String hash) {
    return MessageDigest.isEqual(
        HexFormat.of().parseHex(hash), HexFormat.of().parseHex(hash(password, salt, iterations)));
  }

  static byte[] derive(char[] password, byte[] salt, int iterations, int bits) {
    try {
      return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
          .generateSecret(new PBEKeySpec(password, salt, iterations, bits))
          .getEncoded();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has PBKDF2", e);
    }
  }
}
