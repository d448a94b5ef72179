package corewright.bench.log.table;

import java.util.List;
import java.util.Locale;

/** Refuses texts that are something else under a log's name. */
final class NotALog {
  private NotALog() {}

  static void refuse(String name, List<String> head) {
    int line = 0;
    while (line < head.size() && head.get(line).isBlank()) {
      line++;
    }
    if (line == head.size()) {
      throw Unreadable.at(
          name, 1, 1, "the file is empty", "Ask for the recording again; look at its size first");
    }
    String first = head.get(line).strip();
    int column = head.get(line).indexOf(first) + 1;
    String lower = first.toLowerCase(Locale.ROOT);
    if (lower.startsWith("<")) {
      String kind = lower.startsWith("<?xml") && !lower.contains("html") ? "XML" : "a web page";
      throw Unreadable.at(
          name,
          line + 1,
          column,
          "this is " + kind + ", not rows of a recording",
          "Export the recording itself as CSV, or send the file that the page links to");
    }
    if (lower.startsWith("{") || lower.equals("[") || lower.startsWith("[{")) {
      throw Unreadable.at(
          name,
          line + 1,
          column,
          "this is JSON, not rows of a recording",
          "Export the recording as CSV");
    }
    if (lower.startsWith("%pdf") || lower.startsWith("{\\rtf") || lower.startsWith("pk\u0003")) {
      throw Unreadable.at(
          name,
          line + 1,
          column,
          "this is a document, not rows of a recording",
          "Export the recording as CSV");
    }
  }
}
