package corewright.reports.document;

/** A tag as it is printed: the check character stands in a box of its own. */
final class TagParts {
  private final Page page;

  TagParts(Page page) {
    this.page = page;
  }

  /** Texts and elements, in order; a shop's older numbers have no check character. */
  Object[] of(String tag) {
    if (!tag.matches("U-[0-9]+[0-9A-Z]")) {
      return new Object[] {page.whole(tag)};
    }
    return new Object[] {
      page.whole(tag.substring(0, tag.length() - 1)),
      page.markup().tag("span.check", tag.substring(tag.length() - 1))
    };
  }
}
