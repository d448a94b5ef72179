package corewright.reports.document.logo;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a shape is drawn, as its elements hand it down.
 *
 * @param width of the stroke
 * @param rule a winding rule of {@link Path2D}
 * @param place from the shape's own units to those of the drawing
 */
record SvgStyle(
    Optional<Color> fill, Optional<Color> stroke, double width, int rule, AffineTransform place) {
  static final SvgStyle USUAL =
      new SvgStyle(
          Optional.of(Color.BLACK),
          Optional.empty(),
          1,
          Path2D.WIND_NON_ZERO,
          new AffineTransform());

  private static final Pattern MOVE = Pattern.compile("([a-zA-Z]+)\\s*\\(([^)]*)\\)\\s*,?\\s*");
  private static final Map<String, Color> NAMED =
      Map.of("black", Color.BLACK, "white", Color.WHITE, "currentColor", Color.BLACK);

  /**
   * The style of an element within this one.
   *
   * @param attribute gives an attribute's text, empty where it is missing
   * @throws IllegalArgumentException if it asks for something that is not drawn
   */
  SvgStyle with(UnaryOperator<String> attribute) {
    Map<String, String> said = new HashMap<>();
    for (String key : new String[] {"fill", "stroke", "stroke-width", "fill-rule"}) {
      said.put(key, attribute.apply(key));
    }
    for (String part : attribute.apply("style").split(";", -1)) {
      int colon = part.indexOf(':');
      if (colon > 0) {
        said.put(part.substring(0, colon).strip(), part.substring(colon + 1).strip());
      }
    }
    String width = said.getOrDefault("stroke-width", "").replaceAll("(px|pt|mm)$", "");
    String ruled = said.getOrDefault("fill-rule", "");
    AffineTransform moved = new AffineTransform(place);
    moved.concatenate(moved(attribute.apply("transform")));
    return new SvgStyle(
        colour(said.getOrDefault("fill", ""), fill),
        colour(said.getOrDefault("stroke", ""), stroke),
        width.isEmpty() ? this.width : numbers(width)[0],
        ruled.isEmpty()
            ? rule
            : ruled.equals("evenodd") ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO,
        moved);
  }

  private static Optional<Color> colour(String text, Optional<Color> inherited) {
    if (text.isEmpty() || text.equals("inherit")) {
      return inherited;
    }
    if (text.equals("none")) {
      return Optional.empty();
    }
    if (NAMED.containsKey(text)) {
      return Optional.of(NAMED.get(text));
    }
    String hex = text.matches("#[0-9a-fA-F]{3}") ? text.replaceAll("[0-9a-fA-F]", "$0$0") : text;
    if (!hex.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException(
          "the colour '" + (text.length() > 30 ? text.substring(0, 30) : text) + "' is not read");
    }
    return Optional.of(new Color(Integer.parseInt(hex.substring(1), 16)));
  }

  private static AffineTransform moved(String text) {
    AffineTransform all = new AffineTransform();
    Matcher move = MOVE.matcher(text);
    int end = 0;
    while (move.find() && move.start() == end) {
      all.concatenate(one(move.group(1), numbers(move.group(2))));
      end = move.end();
    }
    if (end != text.length()) {
      throw new IllegalArgumentException("its transform is not read");
    }
    return all;
  }

  private static AffineTransform one(String kind, double[] v) {
    if (kind.equals("translate") && (v.length == 1 || v.length == 2)) {
      return AffineTransform.getTranslateInstance(v[0], v.length == 2 ? v[1] : 0);
    }
    if (kind.equals("scale") && (v.length == 1 || v.length == 2)) {
      return AffineTransform.getScaleInstance(v[0], v.length == 2 ? v[1] : v[0]);
    }
    if (kind.equals("rotate") && v.length == 1) {
      return AffineTransform.getRotateInstance(Math.toRadians(v[0]));
    }
    if (kind.equals("rotate") && v.length == 3) {
      return AffineTransform.getRotateInstance(Math.toRadians(v[0]), v[1], v[2]);
    }
    if (kind.equals("matrix") && v.length == 6) {
      return new AffineTransform(v);
    }
    throw new IllegalArgumentException("the transform " + kind + " is not read");
  }

  /**
   * Numbers between spaces or commas.
   *
   * @throws IllegalArgumentException if there is none, or something else
   */
  static double[] numbers(String text) {
    try {
      return Arrays.stream(text.strip().split("[\\s,]+"))
          .mapToDouble(Double::parseDouble)
          .toArray();
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("'" + text + "' should be numbers", e);
    }
  }
}
