package corewright.reports.chart;

import corewright.profiles.InputZones;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What is drawn how, in the column beside the lanes of a log. */
final class LogKey {
  private static final double LINE = 16;
  private static final double ABOVE_VOID = 13;
  private static final int LONGEST = 20;

  private final Dimensions d;
  private final Dots dots;
  private final Words words;
  private final double x;

  LogKey(Graphics2D g, Words words, double x) {
    this.d = new Dimensions(g);
    this.dots = new Dots(g);
    this.words = words;
    this.x = x;
  }

  /** A lane's name and its channels' marks; returns the last baseline. */
  double names(List<String> titles, String lane, Color colour, double baseline) {
    if (titles.isEmpty()) {
      return baseline;
    }
    d.text(words.get(lane), x, baseline, Type.bold(13), Ink.INK);
    double y = baseline;
    for (int place = 0; place < titles.size(); place++) {
      y += LINE;
      dots.mark(x + 3, y - 4, place, colour, 2.6, true);
      d.text(shortened(titles.get(place)), x + 11, y, Type.regular(13), Ink.INK2);
    }
    return y;
  }

  /**
   * The zones' words at their height, under what stands there already.
   *
   * @param after the last baseline that is taken
   */
  void zones(InputZones zones, Rectangle2D area, Span volts, double after) {
    RuleAxis axis = new RuleAxis(volts, List.of());
    Lane lane = new Lane(area, axis, axis);
    double good = lane.y(zones.good_V());
    double low = lane.y(zones.tolerated_V());
    double tolerated = Math.max((good + low) / 2 + 4, after + LINE - 1);
    double tooLow = Math.max((low + area.getMaxY()) / 2 + 4, tolerated + ABOVE_VOID);
    d.text(words.get("zone.tolerated"), x, tolerated, Type.regular(13), Ink.INK2);
    d.text(words.get("zone.void"), x, tooLow, Type.regular(13), Ink.INK2);
  }

  private static String shortened(String title) {
    return title.length() > LONGEST ? title.substring(0, LONGEST - 1).strip() + "…" : title;
  }
}
