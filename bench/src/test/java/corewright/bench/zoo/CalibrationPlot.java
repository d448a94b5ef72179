package corewright.bench.zoo;

import java.util.Locale;

/** The calibration as a picture: stated to the right, come true upwards, with 95 % intervals. */
final class CalibrationPlot {
  private static final double LEFT = 60;
  private static final double TOP = 20;
  private static final double SIDE = 400;

  private CalibrationPlot() {}

  /** An SVG document. */
  static String of(Calibration calibration) {
    StringBuilder svg = new StringBuilder();
    svg.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 500 480\""
            + " font-family=\"sans-serif\" font-size=\"12\">\n"
            + "<rect width=\"500\" height=\"480\" fill=\"white\"/>\n");
    line(svg, 0, 0, 1, 1, "#999999", "4 4");
    for (int i = 0; i <= 5; i++) {
      double v = i / 5.0;
      line(svg, v, 0, v, -0.015, "#333333", "");
      line(svg, 0, v, -0.015, v, "#333333", "");
      text(svg, x(v), y(0) + 22, "middle", String.format(Locale.ROOT, "%.1f", v));
      text(svg, x(0) - 12, y(v) + 4, "end", String.format(Locale.ROOT, "%.1f", v));
    }
    line(svg, 0, 0, 1, 0, "#333333", "");
    line(svg, 0, 0, 0, 1, "#333333", "");
    for (Calibration.Bin b : calibration.bins()) {
      line(svg, b.stated(), b.low(), b.stated(), b.high(), "#1f5f99", "");
      svg.append(
          String.format(
              Locale.ROOT,
              "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#1f5f99\"/>%n",
              x(b.stated()),
              y(b.observed())));
      boolean below = b.low() > 0.05;
      text(
          svg,
          x(b.stated()),
          below ? y(b.low()) + 14 : y(b.high()) - 6,
          b.stated() < 0.05 ? "start" : "middle",
          "n " + b.n());
    }
    text(svg, x(0.5), y(0) + 44, "middle", "probability that was stated");
    svg.append(
        String.format(
            Locale.ROOT,
            "<text transform=\"translate(16 %.1f) rotate(-90)\" text-anchor=\"middle\">share that"
                + " came true, with 95 %% interval</text>%n</svg>%n",
            y(0.5)));
    return svg.toString();
  }

  private static void line(
      StringBuilder svg, double x1, double y1, double x2, double y2, String colour, String dash) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\""
                + " stroke-width=\"1.5\" stroke-dasharray=\"%s\"/>%n",
            x(x1),
            y(y1),
            x(x2),
            y(y2),
            colour,
            dash.isEmpty() ? "none" : dash));
  }

  private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n",
            x,
            y,
            anchor,
            words));
  }

  private static double x(double share) {
    return LEFT + SIDE * share;
  }

  private static double y(double share) {
    return TOP + SIDE * (1 - share);
  }
}
