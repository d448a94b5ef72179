package corewright.station.work.books;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A spreadsheet saved as text (RFC 4180, with whatever separator): its header and its rows, each
 * with the line that it begins on. A quoted cell may hold separators and line ends.
 */
final class SheetText {
  private static final List<Character> SEPARATORS = List.of(';', '\t', ',', '|');
  private static final char QUOTE = '"';

  /**
   * One row.
   *
   * @param line counted from 1
   */
  record Line(int line, List<String> cells) {
    Line {
      cells = List.copyOf(cells);
    }

    boolean isEmpty() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  private final String text;
  private final char separator;
  private int at;
  private int line = 1;

  private SheetText(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  /** UTF-8 where the bytes are that; otherwise what spreadsheets of the last century wrote. */
  static String decode(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException old) {
      return new String(bytes, Charset.forName("windows-1252"));
    }
  }

  /** The separator that cuts the first rows into the most cells, and into equally many. */
  static char separator(String text) {
    char best = ';';
    int most = 0;
    for (char candidate : SEPARATORS) {
      List<Line> rows = lines(text, candidate);
      int cells = rows.isEmpty() ? 0 : rows.get(0).cells().size();
      long alike = rows.stream().limit(20).filter(r -> r.cells().size() == cells).count();
      int score = cells < 2 ? 0 : (int) (cells * alike);
      if (score > most) {
        most = score;
        best = candidate;
      }
    }
    return best;
  }

  /** Every row that is not empty; the first is the header. */
  static List<Line> lines(String text, char separator) {
    SheetText sheet = new SheetText(text, separator);
    List<Line> lines = new ArrayList<>();
    for (Optional<Line> next = sheet.next(); next.isPresent(); next = sheet.next()) {
      if (!next.get().isEmpty()) {
        lines.add(next.get());
      }
    }
    return lines;
  }

  private Optional<Line> next() {
    if (at >= text.length()) {
      return Optional.empty();
    }
    int first = line;
    List<String> cells = new ArrayList<>();
    boolean more = true;
    while (more) {
      cells.add(cell().strip());
      more = at < text.length() && text.charAt(at) == separator;
      if (more) {
        at++;
      }
    }
    lineEnd();
    return Optional.of(new Line(first, cells));
  }

  private String cell() {
    StringBuilder cell = new StringBuilder();
    boolean quoted = at < text.length() && text.charAt(at) == QUOTE;
    if (quoted) {
      at++;
    }
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (quoted && c == QUOTE) {
        if (at + 1 < text.length() && text.charAt(at + 1) == QUOTE) {
          at++;
        } else {
          quoted = false;
          continue;
        }
      } else if (!quoted && (c == separator || c == '\n' || c == '\r')) {
        break;
      }
      if (c == '\n') {
        line++;
      }
      cell.append(c);
    }
    return cell.toString();
  }

  private void lineEnd() {
    if (at < text.length() && text.charAt(at) == '\r') {
      at++;
    }
    if (at < text.length() && text.charAt(at) == '\n') {
      at++;
    }
    line++;
  }
}
