package corewright.reports.document;

import java.util.Arrays;
import java.util.List;

/** Labels as they come on rolls, by what has room on them. */
public enum Label {
  /** The unit's tag and its symbol. */
  SMALL(50, 25),
  /** The usual strip. */
  STRIP(62, 29),
  /** What a unit carries when it leaves. */
  WIDE(100, 50),
  /** The tag that is tied to a core. */
  TALL(100, 150);

  private static final double MARGIN_MM = 1.5;
  private final double width_mm;
  private final double height_mm;

  Label(double width_mm, double height_mm) {
    this.width_mm = width_mm;
    this.height_mm = height_mm;
  }

  public Paper paper() {
    return new Paper(size(), width_mm, height_mm, MARGIN_MM, MARGIN_MM, MARGIN_MM);
  }

  /** Width and height in mm, as {@code 62x29}. */
  public String size() {
    return Math.round(width_mm) + "x" + Math.round(height_mm);
  }

  /** Every size there is. */
  public static List<String> sizes() {
    return Arrays.stream(values()).map(Label::size).toList();
  }

  /**
   * The label of a size.
   *
   * @throws Refusal if there is none, with those that there are
   */
  public static Label of(String size) {
    return Arrays.stream(values())
        .filter(label -> label.size().equals(size))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "There is no label of " + size + " mm",
                    "Choose one of " + String.join(", ", sizes())));
  }
}
