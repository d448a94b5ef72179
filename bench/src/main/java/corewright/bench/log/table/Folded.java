package corewright.bench.log.table;

import java.text.Normalizer;
import java.util.Locale;

/** Text made comparable: lower case, no accents, broken letters marked. */
final class Folded {
  /** Stands for one letter that an encoding broke. */
  static final char ANY = '?';

  private Folded() {}

  static String of(String text) {
    String plain = Normalizer.normalize(repaired(text), Normalizer.Form.NFKD);
    StringBuilder out = new StringBuilder(plain.length());
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (Character.getType(c) == Character.NON_SPACING_MARK) {
        continue;
      }
      switch (c) {
        case 'ß' -> out.append("ss");
        case 'ø', 'Ø' -> out.append('o');
        case 'ł', 'Ł' -> out.append('l');
        case 'đ', 'Đ' -> out.append('d');
        case 'ı' -> out.append('i');
        case '\u2212' -> out.append('-');
        case 'æ', 'Æ' -> out.append("ae");
        case 'œ', 'Œ' -> out.append("oe");
        default -> out.append(broken(c) ? ANY : c);
      }
    }
    return out.toString().toLowerCase(Locale.ROOT).strip();
  }

  /**
   * A letter of another single-byte encoding read as Windows-1252 comes out as a sign. Letters of
   * other scripts are left alone.
   */
  private static boolean broken(char c) {
    return c == '\uFFFD' || (c > 126 && c < 0x0370 && c != '°' && c != '·' && c != '²' && c != '³');
  }

  /** UTF-8 that was taken for Windows-1252 and written out again: RÃ©gime is Régime. */
  private static String repaired(String text) {
    if (text.indexOf('Ã') < 0 && text.indexOf('Â') < 0) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      char next = i + 1 < text.length() ? text.charAt(i + 1) : ' ';
      boolean lead = c == 'Ã' || c == 'Â';
      if (lead && next >= 0x80 && next <= 0xBF) {
        out.append((char) ((c == 'Ã' ? 0xC0 : 0x80) + (next - 0x80)));
        i++;
      } else if (lead && next == '\u2013') { // Ö: its second byte is a dash in Windows-1252
        out.append('Ö');
        i++;
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  /** Whether {@code text} contains {@code word}, a broken letter standing for any one. */
  static boolean contains(String text, String word) {
    if (text.indexOf(ANY) < 0) {
      return text.contains(word);
    }
    for (int start = 0; start + word.length() <= text.length(); start++) {
      if (matchesAt(text, start, word)) {
        return true;
      }
    }
    return false;
  }

  static boolean same(String text, String word) {
    return text.length() == word.length() && matchesAt(text, 0, word);
  }

  private static boolean matchesAt(String text, int start, String word) {
    int guessed = 0;
    for (int i = 0; i < word.length(); i++) {
      char c = text.charAt(start + i);
      if (c == ANY && word.charAt(i) != ANY) {
        guessed++;
      } else if (c != word.charAt(i)) {
        return false;
      }
    }
    return 4 * guessed <= word.length();
  }
}
