package corewright.bench.log.table;

import java.util.List;

/**
 * Words that name one thing in many languages. {@code bat} is a whole word, {@code batt*} begins
 * one, {@code *spannung*} stands anywhere in the name with its spaces taken out.
 */
final class Words {
  private final List<String> patterns;

  private Words(List<String> patterns) {
    this.patterns = patterns;
  }

  /** Patterns separated by spaces; {@code +} joins the words of one that must follow each other. */
  static Words of(String... lines) {
    return new Words(List.of(String.join(" ", lines).strip().split(" +", -1)));
  }

  boolean in(Label label) {
    return count(label) > 0;
  }

  /** How many of the patterns the name has. */
  int count(Label label) {
    return (int) patterns.stream().filter(p -> matches(p, label)).count();
  }

  /** Whether every word of the name is one of these. */
  boolean areAll(Label label) {
    return !label.blank()
        && label.words().stream().allMatch(w -> patterns.stream().anyMatch(p -> word(p, w)));
  }

  private static boolean matches(String pattern, Label label) {
    if (pattern.startsWith("*")) {
      return Folded.contains(label.squashed(), pattern.substring(1, pattern.length() - 1));
    }
    return label.words().stream().anyMatch(w -> word(pattern, w));
  }

  private static boolean word(String pattern, String word) {
    if (pattern.startsWith("*")) {
      return Folded.contains(word, pattern.substring(1, pattern.length() - 1));
    }
    if (pattern.endsWith("*")) {
      String stem = pattern.substring(0, pattern.length() - 1);
      return word.length() >= stem.length() && Folded.same(word.substring(0, stem.length()), stem);
    }
    return Folded.same(word, pattern);
  }
}
