package corewright.reports.ledger;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;

/** What a tag with a wrong check character may have been: one character off, or two swapped. */
final class Mistyped {
  private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private Mistyped() {}

  /** Tags whose check character fits, one slip away; none for a tag that is right. */
  static Set<String> candidates(String typed) {
    String tag = typed.strip().toUpperCase(Locale.ROOT);
    Set<String> candidates = new LinkedHashSet<>();
    if (!tag.matches("U-[0-9A-Z]{6,}") || Tags.isValid(tag)) {
      return candidates;
    }
    for (int i = 2; i < tag.length(); i++) {
      for (int c = 0; c < CHARACTERS.length(); c++) {
        add(candidates, tag.substring(0, i) + CHARACTERS.charAt(c) + tag.substring(i + 1));
      }
      if (i + 1 < tag.length()) {
        add(
            candidates,
            tag.substring(0, i) + tag.charAt(i + 1) + tag.charAt(i) + tag.substring(i + 2));
      }
    }
    return candidates;
  }

  private static void add(Set<String> candidates, String tag) {
    if (Tags.isValid(tag)) {
      candidates.add(tag);
    }
  }
}
