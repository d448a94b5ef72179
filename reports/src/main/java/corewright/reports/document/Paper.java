package corewright.reports.document;

import java.util.Locale;

/**
 * What is printed on: a sheet of the region, or a label from a roll.
 *
 * @param width_mm across the text
 * @param side_mm margin left and right
 * @param number what stands at the foot of each page, before which page it is of how many; often
 *     empty
 */
public record Paper(
    String id,
    double width_mm,
    double height_mm,
    double top_mm,
    double side_mm,
    double bottom_mm,
    String number) {

  /** Sheets without a number of their own. */
  Paper(
      String id,
      double width_mm,
      double height_mm,
      double top_mm,
      double side_mm,
      double bottom_mm) {
    this(id, width_mm, height_mm, top_mm, side_mm, bottom_mm, "");
  }

  /** ISO 216. */
  public static final Paper A4 = new Paper("A4", 210, 297, 12, 16, 9);

  /** 8½ by 11 inches; it keeps the measure of 178 mm, so no line breaks differently. */
  public static final Paper LETTER = new Paper("Letter", 215.9, 279.4, 12, 18.95, 9);

  /** The sheet that offices of a region use: Letter in North America, A4 elsewhere. */
  public static Paper of(Locale region) {
    return switch (region.getCountry()) {
      case "US", "CA" -> LETTER;
      default -> A4;
    };
  }

  /** The same with a number at the foot of each page. */
  Paper numbered(String text) {
    return new Paper(id, width_mm, height_mm, top_mm, side_mm, bottom_mm, text);
  }

  /** Height between the margins, less what rounding may cost, mm. */
  double room_mm() {
    return height_mm - top_mm - bottom_mm - 0.6;
  }

  /** The rule that sets the page. */
  String css() {
    return String.format(
        Locale.ROOT,
        "@page { size: %.2fmm %.2fmm; margin: %.2fmm %.2fmm %.2fmm; %s}%n",
        width_mm,
        height_mm,
        top_mm,
        side_mm,
        bottom_mm,
        number.isEmpty() ? "" : foot());
  }

  private String foot() {
    String plain = number.replaceAll("[^0-9A-Za-z ._/-]", "_");
    return "@bottom-right { font-family: \"Corewright Sans\"; font-size: 8pt; color: #474D49;"
        + " vertical-align: top; padding-top: 1mm; content: \""
        + plain
        + ", \" counter(page) \" / \" counter(pages); } ";
  }
}
