package corewright.reports.ledger;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jdbi.v3.core.Handle;

/**
 * Makers' serials as they are searched for. What was read stays as it was read; this is beside it.
 */
final class Serials {
  /** Shorter parts of a serial match too much to be worth an entry. */
  private static final int SHORTEST_PART = 3;

  private Serials() {}

  /** Capitals and digits only, whatever was typed between them. */
  static String key(String serial) {
    String plain = Normalizer.normalize(serial, Normalizer.Form.NFKC).toUpperCase(Locale.ROOT);
    StringBuilder key = new StringBuilder();
    plain.codePoints().filter(Character::isLetterOrDigit).forEach(key::appendCodePoint);
    return key.toString();
  }

  /**
   * Whether two keys are of one serial: what is written before a number, as SN, counts for none.
   */
  static boolean same(String one, String other) {
    String longer = one.length() < other.length() ? other : one;
    String shorter = one.length() < other.length() ? one : other;
    return longer.endsWith(shorter)
        && longer
            .substring(0, longer.length() - shorter.length())
            .matches("|S|SN|SNO|SNR|SER|SERNO|SERNR|SERIAL|SERIALNO|NO|NR");
  }

  /** Every ending of {@code key}, itself included, that is long enough to be searched for. */
  static List<String> tails(String key) {
    List<String> tails = new ArrayList<>();
    for (int from = 0; from <= Math.max(0, key.length() - SHORTEST_PART); from++) {
      tails.add(key.substring(from));
    }
    return tails;
  }

  /** From then on the unit is found by every part of this serial. */
  static void keepTails(Handle handle, String key, String tag) {
    tails(key)
        .forEach(
            tail ->
                handle.execute(
                    "INSERT INTO serial_tail (tail, tag) VALUES (?, ?) ON CONFLICT DO NOTHING",
                    tail,
                    tag));
  }
}
