package corewright.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.Locale;

/** What to do about a syntax error, from what the parser says about it. */
final class SyntaxHint {
  private record Hint(String says, String remedy) {}

  private static final List<Hint> HINTS =
      List.of(
          new Hint(
              "double-quote to start field name", "Remove the comma before it, or quote the key"),
          new Hint("end-of-input", "A closing bracket or quote is missing"),
          new Hint("was expecting comma", "Write a comma between the two, or a decimal point"),
          new Hint("was expecting a colon", "Write a colon between key and value"),
          new Hint("maybe a (non-standard) comment", "Remove the comment: JSON has none"),
          new Hint("leading zero", "Write the number without leading zeros"));

  private SyntaxHint() {}

  /** What the parser says, without its own words about where it got the text from. */
  static String said(JsonProcessingException syntax) {
    return String.valueOf(syntax.getOriginalMessage())
        .replaceAll("\\s*\\(start marker at \\[Source: [^\\[\\]]*\\]\\)", "");
  }

  static String of(JsonProcessingException syntax) {
    String said = said(syntax);
    return HINTS.stream()
        .filter(hint -> said.toLowerCase(Locale.ROOT).contains(hint.says))
        .findFirst()
        .map(Hint::remedy)
        .orElse("Correct the JSON there");
  }
}
