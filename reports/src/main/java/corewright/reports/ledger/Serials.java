package corewright.reports.ledger;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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

  /** Every ending of {@code key}, itself included, that is long enough to be searched for. */
  static List<String> tails(String key) {
    List<String> tails = new ArrayList<>();
    for (int from = 0; from <= Math.max(0, key.length() - SHORTEST_PART); from++) {
      tails.add(key.substring(from));
    }
    return tails;
  }
}
