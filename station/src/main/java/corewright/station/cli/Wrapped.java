package corewright.station.cli;

import java.util.ArrayList;
import java.util.List;

/** Text that is too long for a line, broken between words. */
final class Wrapped {
  private Wrapped() {}

  /** Lines of at most {@code width} characters; a single word may be longer. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
