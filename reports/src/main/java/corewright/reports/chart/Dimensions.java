package corewright.reports.chart;

import corewright.profiles.Limit;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The strokes of a dimensioned drawing: floors, jaws, arrows, witness lines and what is said there.
 */
final class Dimensions {
  private static final double HEAD = 7;
  private static final double HEAD_HALF = 2.6;
  private static final double FLOOR_PITCH = 9;
  private static final double FLOOR_STROKE = 7;

  private final Graphics2D g;

  Dimensions(Graphics2D g) {
    this.g = g;
  }

  /** A limit: a heavy line with short strokes on the side where nothing may be. */
  void floor(double fromX, double toX, double y, Limit.Side side) {
    line(Ink.INK, Ink.FLOOR, fromX, y, toX, y);
    double down = side == Limit.Side.AT_LEAST ? 1 : -1;
    Path2D strokes = new Path2D.Double();
    for (double x = fromX + FLOOR_PITCH * 0.9; x < toX; x += FLOOR_PITCH) {
      strokes.moveTo(x, y + down);
      strokes.lineTo(x - FLOOR_STROKE * 0.62, y + down * (1 + FLOOR_STROKE));
    }
    g.setColor(Ink.INK);
    g.setStroke(Ink.FLOOR_TEETH);
    g.draw(strokes);
  }

  /**
   * One jaw of the caliper.
   *
   * @param inwards 1 for the left jaw, −1 for the right one
   */
  void jaw(double x, double top, double bottom, int inwards) {
    line(Ink.INK, Ink.JAW, x, top, x, bottom);
    Path2D jaw = new Path2D.Double();
    jaw.moveTo(x, top - 2);
    jaw.lineTo(x - inwards * 15, top - 2);
    jaw.lineTo(x - inwards * 15, top + 10);
    jaw.lineTo(x - inwards * 4, top + 28);
    jaw.lineTo(x, top + 28);
    jaw.closePath();
    g.fill(jaw);
  }

  /** A dimension line along the horizontal with a head at both ends. */
  void along(double fromX, double toX, double y) {
    line(Ink.INK, Ink.DIMENSION, fromX, y, toX, y);
    g.fill(head(fromX, y, 1, 0));
    g.fill(head(toX, y, -1, 0));
  }

  /** A dimension line along the vertical; where there is no room, its heads come from outside. */
  void upright(double x, double top, double bottom) {
    boolean outside = bottom - top < 2 * HEAD + 2;
    double reach = outside ? 2 * HEAD : 0;
    line(Ink.INK, Ink.DIMENSION, x, top - reach, x, bottom + reach);
    int way = outside ? -1 : 1;
    g.fill(head(x, top, 0, way));
    g.fill(head(x, bottom, 0, -way));
  }

  void witness(double fromX, double toX, double y) {
    line(Ink.INK2, Ink.WITNESS, fromX, y, toX, y);
  }

  /** A division of a scale, from side to side. */
  void hair(double fromX, double toX, double y) {
    line(Ink.HAIR, Ink.HAIRLINE, fromX, y, toX, y);
  }

  /** The line that an axis stands on. */
  void rule(double fromX, double toX, double y) {
    line(Ink.RULE, Ink.TICK, fromX, y, toX, y);
  }

  /** A division of a time axis. */
  void tick(double x, double y, double length) {
    line(Ink.RULE, Ink.TICK, x, y, x, y + length);
  }

  /** A point with a black label beside it, kept inside {@code within}. */
  void label(double x, double y, String words, Rectangle2D within) {
    Font font = Type.extra(15);
    double width = width(words, font) + 16;
    boolean left = x + 30 + width > within.getMaxX();
    double at = left ? x - 30 - width : x + 30;
    double top = Math.min(Math.max(y - 11, within.getY()), within.getMaxY() - 22);
    line(Ink.INK, Ink.MARK, x, y, left ? at + width : at, top + 11);
    g.setColor(Ink.INK);
    g.fill(new Ellipse2D.Double(x - 4.5, y - 4.5, 9, 9));
    g.fill(new Rectangle2D.Double(at, top, width, 22));
    text(words, at + 8, top + 16, font, Ink.PAPER);
  }

  /** Text whose left end is at {@code x}. */
  void text(String words, double x, double baseline, Font font, Color colour) {
    g.setFont(font);
    g.setColor(colour);
    g.drawString(words, (float) x, (float) baseline);
  }

  void textBefore(String words, double rightX, double baseline, Font font, Color colour) {
    text(words, rightX - width(words, font), baseline, font, colour);
  }

  /** Centred text on ground of its own, so that a line may run behind it. */
  void textOver(String words, double centreX, double baseline, Font font) {
    double width = width(words, font);
    g.setColor(Ink.PAPER);
    g.fill(
        new Rectangle2D.Double(
            centreX - width / 2 - 6,
            baseline - font.getSize2D(),
            width + 12,
            font.getSize2D() * 1.3));
    text(words, centreX - width / 2, baseline, font, Ink.INK);
  }

  /** Text with an edge of paper, which stays readable where a curve or a hatch runs behind it. */
  void textOnCurves(String words, double x, double baseline, Font font) {
    Shape outline =
        font.createGlyphVector(g.getFontRenderContext(), words)
            .getOutline((float) x, (float) baseline);
    g.setColor(Ink.PAPER);
    g.setStroke(Ink.HALO);
    g.draw(outline);
    text(words, x, baseline, font, Ink.INK);
  }

  double width(String words, Font font) {
    return g.getFontMetrics(font).stringWidth(words);
  }

  private void line(Color colour, Stroke stroke, double x0, double y0, double x1, double y1) {
    g.setColor(colour);
    g.setStroke(stroke);
    g.draw(new Line2D.Double(x0, y0, x1, y1));
  }

  /** An arrow head with its point at (x, y), its body lying towards (dx, dy). */
  private static Path2D head(double x, double y, int dx, int dy) {
    Path2D head = new Path2D.Double();
    head.moveTo(x, y);
    head.lineTo(x + dx * HEAD + dy * HEAD_HALF, y + dy * HEAD + dx * HEAD_HALF);
    head.lineTo(x + dx * HEAD - dy * HEAD_HALF, y + dy * HEAD - dx * HEAD_HALF);
    head.closePath();
    return head;
  }
}
