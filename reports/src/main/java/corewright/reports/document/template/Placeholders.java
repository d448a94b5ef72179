package corewright.reports.document.template;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names in braces that stand for something of the unit: {@code {customer}}. */
public final class Placeholders {
  /** All that there are. */
  public static final List<String> NAMES =
      List.of(
          "unit",
          "family",
          "label",
          "serial",
          "customer",
          "received",
          "today",
          "shop",
          "address",
          "contact",
          "question",
          "owner",
          "due");

  static final Pattern NAME = Pattern.compile("\\{([a-z]+)}");

  private Placeholders() {}

  /**
   * A text with the values in their places; a value's own braces mean nothing.
   *
   * @param values one for each of {@link #NAMES}
   */
  public static String filled(String text, Map<String, String> values) {
    return NAME.matcher(text)
        .replaceAll(
            name -> Matcher.quoteReplacement(values.getOrDefault(name.group(1), name.group())));
  }
}
