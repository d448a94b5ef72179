package corewright.reports.document;

import corewright.bench.life.VehicleNumbers;
import java.text.Normalizer;
import java.util.function.IntPredicate;

/**
 * Foreign text made fit for paper: one line, nothing that acts on the text around it, nothing that
 * the type lacks, no longer than its place. Markup needs no care here: text never becomes markup.
 */
final class Clean {
  private static final int UNPRINTABLE = '?';
  private final IntPredicate printable;
  private boolean replaced;

  /**
   * @param printable whether the type has a glyph for a code point
   */
  Clean(IntPredicate printable) {
    this.printable = printable;
  }

  /**
   * What a person said, without the number of a vehicle.
   *
   * @param most code points that have room; a longer text ends in an ellipsis
   */
  String text(String typed, int most) {
    return asItStands(VehicleNumbers.without(typed), most);
  }

  /** What stands on a unit: its serial may look like the number of a vehicle. */
  String asItStands(String typed, int most) {
    String foreign = composed(typed);
    StringBuilder clean = new StringBuilder();
    int used = 0;
    for (int at = 0; at < foreign.length() && used < most; used++) {
      int c = foreign.codePointAt(at);
      at += Character.charCount(c);
      if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        clean.append(c == 0xA0 ? '\u00A0' : ' ');
      } else if (acts(c)) {
        used--;
      } else {
        clean.appendCodePoint(printed(c));
      }
    }
    String line = clean.toString().replaceAll(" {2,}", " ").strip();
    return foreign.codePointCount(0, foreign.length()) > most ? line + "…" : line;
  }

  /** Characters of a text that the type lacks, each once, in the order in which they come. */
  int[] lacking(String foreign) {
    return composed(foreign)
        .codePoints()
        .filter(c -> !acts(c) && !Character.isWhitespace(c) && !Character.isSpaceChar(c))
        .filter(c -> !printable.test(c))
        .distinct()
        .toArray();
  }

  /** A letter and its accent typed one after the other are the letter with the accent. */
  private static String composed(String foreign) {
    return Normalizer.normalize(foreign, Normalizer.Form.NFC);
  }

  /** Whether a character had to be replaced because the type lacks it. */
  boolean replaced() {
    return replaced;
  }

  private int printed(int c) {
    if (printable.test(c)) {
      return c;
    }
    replaced = true;
    return UNPRINTABLE;
  }

  /** Controls, marks of direction, joiners, halves of pairs, private characters. */
  private static boolean acts(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
