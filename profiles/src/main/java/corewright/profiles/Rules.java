package corewright.profiles;

import corewright.files.Mistake;
import corewright.files.Nearest;
import corewright.files.Section;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** What rules of both files share. */
final class Rules {
  private Rules() {}

  /** One rule: names to {@code found} what breaks it. */
  interface Rule<T> {
    void check(T draft, Consumer<Mistake> found);
  }

  /** No two entries of a list have the same id. */
  static void uniqueIds(List<Section> entries, String what, Consumer<Mistake> found) {
    Set<String> seen = new HashSet<>();
    for (Section entry : entries) {
      String id = entry.text("id");
      if (!id.isEmpty() && !seen.add(id)) {
        found.accept(
            entry.mistake("id", "two " + what + " are called '" + id + "'", "Rename one of them"));
      }
    }
  }

  /** What to do about a word that is none of those known. */
  static String meant(String word, Collection<String> known) {
    return Nearest.to(word, known)
        .map(k -> "Did you mean '" + k + "'?")
        .orElse("Use one of: " + String.join(", ", known));
  }
}
