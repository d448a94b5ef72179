package corewright.reports.document;

import java.awt.Color;
import java.util.List;
import java.util.Optional;

/**
 * The colour in which a shop sets its name and the line below it. It must be read on white paper,
 * also on a bad print, and it must not say danger, warning, safe or must.
 */
public record Colour(int rgb) {
  /** The ink of every other line. */
  public static final Colour INK = new Colour(0x191D1B);

  /** What text of that size needs. */
  private static final double LEAST_CONTRAST = 4.5;

  /** Below this it is grey to everybody, whatever its hue. */
  private static final double GREY = 0.12;

  /**
   * Hues that people call by the name of a safety colour, in degrees of the colour circle: wide
   * about each, for paper and printers shift them. Common practice, no source.
   *
   * @see "ISO 3864-1: red, yellow, green and blue have meanings of their own (from memory)"
   */
  private static final List<Taken> TAKEN =
      List.of(
          new Taken("red", 340, 374),
          new Taken("yellow", 36, 70),
          new Taken("green", 70, 180),
          new Taken("blue", 180, 255));

  private record Taken(String name, double from_deg, double to_deg) {
    boolean holds(double hue_deg) {
      return (hue_deg >= from_deg && hue_deg < to_deg)
          || (hue_deg + 360 >= from_deg && hue_deg + 360 < to_deg);
    }
  }

  /**
   * A colour as {@code #8C3D12}.
   *
   * @throws IllegalArgumentException if it is none
   */
  public static Colour of(String hex) {
    if (!hex.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("'" + hex + "' is no colour as #8C3D12");
    }
    return new Colour(Integer.parseInt(hex.substring(1), 16));
  }

  /** Why it cannot be used; usually empty. */
  public Optional<String> fault() {
    Optional<Taken> taken =
        chroma() < GREY
            ? Optional.empty()
            : TAKEN.stream().filter(t -> t.holds(hue_deg())).findFirst();
    if (taken.isPresent()) {
      return Optional.of(
          "its hue is "
              + taken.get().name
              + ", which on these pages speaks of people's safety and of nothing else");
    }
    if (contrast() < LEAST_CONTRAST) {
      return Optional.of(
          String.format(
              java.util.Locale.ROOT,
              "its contrast on white paper is %.1f to 1, and text needs %.1f",
              contrast(),
              LEAST_CONTRAST));
    }
    return Optional.empty();
  }

  /**
   * Contrast with white, 1 to 21.
   *
   * @see "WCAG 2.2, contrast ratio and relative luminance"
   */
  double contrast() {
    double luminance =
        0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int channel) {
    double c = (channel & 0xFF) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private double chroma() {
    int r = rgb >> 16 & 0xFF;
    int g = rgb >> 8 & 0xFF;
    int b = rgb & 0xFF;
    return (Math.max(r, Math.max(g, b)) - Math.min(r, Math.min(g, b))) / 255.0;
  }

  private double hue_deg() {
    return 360.0 * Color.RGBtoHSB(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, null)[0];
  }

  /** As style sheets write it. */
  @Override
  public String toString() {
    return String.format("#%06X", rgb);
  }
}
