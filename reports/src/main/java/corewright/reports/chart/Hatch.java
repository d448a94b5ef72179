package corewright.reports.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Textures as lines and dots, not as pictures, so that they stay sharp on paper: strokes at 45°
 * where nothing can be said, dots where a pass counts and a fail does not.
 */
final class Hatch {
  private Hatch() {}

  /**
   * Fills {@code area} with strokes that rise to the right.
   *
   * @param pitch distance between strokes along the horizontal
   */
  static void lines(Graphics2D g, Rectangle2D area, double pitch, float width) {
    Path2D path = new Path2D.Double();
    double h = area.getHeight();
    for (double x = area.getX() - h + pitch / 2; x < area.getMaxX(); x += pitch) {
      double left = Math.max(x, area.getX());
      double right = Math.min(x + h, area.getMaxX());
      path.moveTo(left, area.getMaxY() - (left - x));
      path.lineTo(right, area.getMaxY() - (right - x));
    }
    g.setStroke(Ink.line(width));
    g.draw(path);
  }

  /** Fills {@code area} with dots, every second row set off by half a pitch. */
  static void dots(Graphics2D g, Rectangle2D area, double pitch, double radius) {
    Shape clip = g.getClip();
    g.clip(area);
    boolean shifted = false;
    for (double y = area.getY() + pitch / 2; y < area.getMaxY(); y += pitch * 0.7) {
      for (double x = area.getX() + (shifted ? pitch : pitch / 2); x < area.getMaxX(); x += pitch) {
        g.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
      }
      shifted = !shifted;
    }
    g.setClip(clip);
  }
}
