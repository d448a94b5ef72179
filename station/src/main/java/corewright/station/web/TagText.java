package corewright.station.web;

/** A tag as it is printed: its body, and its check character apart. */
public final class TagText {
  private TagText() {}

  public static String body(String tag) {
    return tag.isEmpty() ? tag : tag.substring(0, tag.length() - 1);
  }

  public static String check(String tag) {
    return tag.isEmpty() ? "" : tag.substring(tag.length() - 1);
  }
}
