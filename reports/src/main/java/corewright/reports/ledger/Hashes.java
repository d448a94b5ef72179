package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * SHA-256 of texts and of events. An event is hashed over its fields in the order of the table,
 * each in UTF-8 behind its length and a colon, so that no two different events have the same bytes;
 * {@code reports/README.md} shows how to compute it with other programs.
 *
 * @see "FIPS 180-4, SHA-256"
 */
final class Hashes {
  /** What the first event of a chain gives as its predecessor. */
  static final String NOTHING = "0".repeat(64);

  private Hashes() {}

  static String of(String text) {
    return of(text.getBytes(UTF_8));
  }

  static String of(byte[] bytes) {
    return hex(sha256().digest(bytes));
  }

  static String of(
      String chain,
      long sequence,
      String at,
      String who,
      String kind,
      String tag,
      String body,
      String previous) {
    MessageDigest digest = sha256();
    for (String field :
        List.of(chain, Long.toString(sequence), at, who, kind, tag, body, previous)) {
      byte[] bytes = field.getBytes(UTF_8);
      digest.update((bytes.length + ":").getBytes(UTF_8));
      digest.update(bytes);
    }
    return hex(digest.digest());
  }

  /** The hash that {@code event} ought to carry. */
  static String of(Event event) {
    return of(
        event.chain(),
        event.sequence(),
        event.at(),
        event.who(),
        event.kind(),
        event.tag(),
        event.body(),
        event.previous());
  }

  private static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(bytes);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
