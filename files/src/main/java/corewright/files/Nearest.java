package corewright.files;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Guesses which known word was meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word that is least typing mistakes away, or empty where none is near: more than a
   * third of its letters wrong is another word.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    return known.stream()
        .filter(k -> distance(word, k) <= Math.max(1, Math.max(k.length(), word.length()) / 3))
        .min(Comparator.<String>comparingInt(k -> distance(word, k)).thenComparing(k -> k));
  }

  /**
   * Inserted, left-out, wrong and swapped neighbouring letters, whatever their case, that lie
   * between two words (the optimal string alignment distance).
   */
  static int distance(String left, String right) {
    String a = left.toLowerCase(Locale.ROOT);
    String b = right.toLowerCase(Locale.ROOT);
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + wrong, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
