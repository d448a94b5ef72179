package corewright.reports.chart;

import corewright.bench.log.Dot;
import corewright.bench.log.Trace;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Predicate;

/**
 * Samples as dots, never joined: between two of them nothing is known. Filled where they count,
 * hollow where they do not; the channels of a lane differ in shape, so that grey paper shows them.
 */
final class Dots {
  private static final Stroke EDGE = new BasicStroke(1.1f);

  private final Graphics2D g;

  Dots(Graphics2D g) {
    this.g = g;
  }

  /**
   * Draws a channel into its lane.
   *
   * @param place of the channel in its lane, from 0: its shape
   */
  void draw(Trace trace, Lane lane, int place, Color colour, double radius, Predicate<Dot> counts) {
    Shape clip = g.getClip();
    g.clip(lane.area());
    for (Dot dot : trace.dots()) {
      mark(lane.x(dot.t_s()), lane.y(dot.value()), place, colour, radius, counts.test(dot));
    }
    g.setClip(clip);
  }

  /** One mark, for a lane or for its key. */
  void mark(double x, double y, int place, Color colour, double radius, boolean filled) {
    Shape shape = shape(x, y, place, radius);
    g.setColor(filled ? colour : Ink.PAPER);
    g.fill(shape);
    g.setColor(colour);
    g.setStroke(EDGE);
    g.draw(shape);
  }

  private static Shape shape(double x, double y, int place, double r) {
    return switch (place % 3) {
      case 0 -> new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
      case 1 -> new Rectangle2D.Double(x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
      default -> {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x, y - 1.2 * r);
        triangle.lineTo(x + 1.15 * r, y + 0.9 * r);
        triangle.lineTo(x - 1.15 * r, y + 0.9 * r);
        triangle.closePath();
        yield triangle;
      }
    };
  }
}
