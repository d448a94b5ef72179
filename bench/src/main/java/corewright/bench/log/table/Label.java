package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's name taken apart.
 *
 * @param original as it stands in the file
 * @param words lower case, no accents, the unit left out
 * @param squashed the words without spaces, for languages that join them
 * @param unit the unit that the name states, if it does
 */
record Label(String original, List<String> words, String squashed, Optional<LogUnit> unit) {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[{<]([^)\\]}>]*)[)\\]}>]?");
  private static final Pattern CAMEL = Pattern.compile("(?<=[a-zà-ÿ])(?=[A-ZÀ-Þ])");
  private static final Pattern CUTS = Pattern.compile("[^\\p{L}\\p{N}?+#°%]+");

  /** Signals that are counted: time1, val1. */
  private static final Pattern NUMBERED =
      Pattern.compile("(t|time|timestamp|zeit|temps|tiempo|tempo|tijd|czas|tid|val|value)(\\d+)");

  Label {
    words = List.copyOf(words);
  }

  /** Takes a name apart; {@code unitsRow} is the cell under it, empty where there is none. */
  static Label of(String name, String unitsRow) {
    String rest = name;
    Optional<LogUnit> unit = LogUnit.of(unitsRow);
    Matcher bracket = BRACKETS.matcher(name);
    while (bracket.find()) {
      Optional<LogUnit> inside = LogUnit.of(bracket.group(1));
      if (inside.isPresent()) {
        unit = unit.or(() -> inside);
        rest = rest.replace(bracket.group(), " ");
      }
    }
    if (unit.isEmpty()) {
      Tail tail = Tail.of(rest.strip());
      unit = tail.unit;
      rest = tail.name;
    }
    return new Label(name, wordsOf(rest), String.join("", wordsOf(rest)), unit);
  }

  boolean blank() {
    return words.isEmpty();
  }

  private static List<String> wordsOf(String text) {
    List<String> words = new ArrayList<>();
    for (String part : CUTS.split(Folded.of(CAMEL.matcher(text).replaceAll(" ")), -1)) {
      Matcher numbered = NUMBERED.matcher(part);
      if (numbered.matches()) {
        words.add(numbered.group(1));
        words.add(numbered.group(2));
      } else if (!part.isEmpty()) {
        words.add(part);
      }
    }
    return words;
  }

  /** A unit that ends the name: {@code Boost V}, {@code vbat_mV}, {@code n 1/min}, {@code U/V}. */
  private record Tail(String name, Optional<LogUnit> unit) {
    static Tail of(String text) {
      for (char cut : new char[] {' ', '_', ',', ';', ':', '.', '-', '/'}) {
        int at = text.lastIndexOf(cut);
        if (at <= 0 || at == text.length() - 1) {
          continue;
        }
        Optional<LogUnit> unit = LogUnit.of(text.substring(at + 1));
        String before = text.substring(0, at).strip();
        if (unit.isPresent() && !before.isEmpty()) {
          return new Tail(
              before.endsWith(" in") ? before.substring(0, before.length() - 3) : before, unit);
        }
      }
      return new Tail(text, Optional.empty());
    }
  }
}
