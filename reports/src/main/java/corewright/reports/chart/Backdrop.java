package corewright.reports.chart;

import corewright.profiles.InputZones;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.annotations.XYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** What lies under the curves: the judged ground, the input's zones, the teeth. */
final class Backdrop {
  private static final FontRenderContext FLAT = new FontRenderContext(null, true, true);

  private Backdrop() {}

  /** Paler ground under a judged window. */
  static XYAnnotation ground(Span window) {
    return drawn((g, lane) -> ground(g, lane, window));
  }

  static void ground(Graphics2D g, Lane lane, Span window) {
    g.setColor(Ink.WINDOW);
    g.fill(lane.between(window));
  }

  static XYAnnotation zones(InputZones zones, Span span) {
    return drawn((g, lane) -> zones(g, lane, zones, span));
  }

  static void zones(Graphics2D g, Lane lane, InputZones zones, Span span) {
    double good = lane.y(zones.good_V());
    double tolerated = lane.y(zones.tolerated_V());
    double bottom = lane.y(span.from());
    Rectangle2D all = lane.area();
    g.setColor(Ink.RULE);
    Hatch.dots(
        g, new Rectangle2D.Double(all.getX(), good, all.getWidth(), tolerated - good), 7, 0.95);
    Hatch.lines(
        g,
        new Rectangle2D.Double(all.getX(), tolerated, all.getWidth(), bottom - tolerated),
        8.5,
        1.2f);
    g.setStroke(Ink.HAIRLINE);
    Path2D edges = new Path2D.Double();
    for (double y : new double[] {good, tolerated}) {
      edges.moveTo(all.getX(), y);
      edges.lineTo(all.getMaxX(), y);
    }
    g.draw(edges);
  }

  /** What hangs from the level: in each column a stroke from its highest to its lowest sample. */
  static XYAnnotation teeth(Trace trace, Color colour) {
    return drawn(
        (g, lane) -> {
          Path2D path = new Path2D.Double();
          for (int i = 0; i < trace.columns(); i++) {
            double high = lane.y(trace.high(i));
            double low = lane.y(trace.low(i));
            if (low - high > 1) { // NaN is not
              double x = lane.x(trace.time_s(i));
              path.moveTo(x, high);
              path.lineTo(x, low);
            }
          }
          g.setColor(colour);
          g.setStroke(Ink.TEETH);
          g.draw(path);
        });
  }

  /** The word across the lane, filled as everything is of which nothing can be said. */
  static XYAnnotation emulated(Words words) {
    return drawn(
        (g, lane) -> {
          Shape word = word(words, lane.area());
          Shape clip = g.getClip();
          g.setColor(Ink.RULE);
          g.clip(word);
          Hatch.lines(g, word.getBounds2D(), 6, 1.3f);
          g.setClip(clip);
          g.setStroke(Ink.HAIRLINE);
          g.draw(word);
        });
  }

  /** The word again, plain on ground that is hatched already. */
  static void emulatedOverHatch(Graphics2D g, Words words, Rectangle2D area) {
    Shape word = word(words, area);
    g.setColor(Ink.PAPER);
    g.fill(word);
    g.setColor(Ink.INK2);
    g.setStroke(Ink.HAIRLINE);
    g.draw(word);
  }

  private static Shape word(Words words, Rectangle2D area) {
    Font font = Type.extra(Math.min(area.getHeight() * 0.62, area.getWidth() / 6.2));
    Shape word = font.createGlyphVector(FLAT, words.get("emulated")).getOutline();
    Rectangle2D bounds = word.getBounds2D();
    return AffineTransform.getTranslateInstance(
            area.getCenterX() - bounds.getCenterX(), area.getCenterY() - bounds.getCenterY())
        .createTransformedShape(word);
  }

  private interface Drawing {
    void draw(Graphics2D g, Lane lane);
  }

  private static XYAnnotation drawn(Drawing drawing) {
    return new AbstractXYAnnotation() {
      private static final long serialVersionUID = 1L;

      @Override
      public void draw(
          Graphics2D g2,
          XYPlot plot,
          Rectangle2D area,
          ValueAxis time,
          ValueAxis value,
          int index,
          PlotRenderingInfo info) {
        drawing.draw(g2, new Lane(area, time, value));
      }
    };
  }
}
