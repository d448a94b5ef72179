package corewright.reports.document.genuine;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Ten characters that a person can read over the telephone: the first 50 bits of the SHA-256 of the
 * record that a document is made from. No letter in it is taken for a digit.
 *
 * @see "FIPS 180-4, SHA-256"
 */
public final class ShortCode {
  private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  private static final int LETTERS = 10;

  private ShortCode() {}

  /** The code of a record, as {@code 7K3QM-9TF2D}. */
  public static String of(byte[] record) {
    byte[] hash = sha256(record);
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < LETTERS; i++) {
      int bits = 0;
      for (int b = 5 * i; b < 5 * i + 5; b++) {
        bits = bits << 1 | ((hash[b / 8] >> (7 - b % 8)) & 1);
      }
      code.append(ALPHABET.charAt(bits)).append(i == LETTERS / 2 - 1 ? "-" : "");
    }
    return code.toString();
  }

  static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
