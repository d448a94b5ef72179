package corewright.reports.chart;

import corewright.bench.record.Disposition;
import corewright.bench.record.Verdict;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The outlines of verdicts and dispositions, told apart without colour. A verdict is the picture in
 * small: a window, the limit, and what the curve did. A disposition is the unit's own tag, cut so
 * that its outline says where the unit goes. Drawn on a field of 48 × 36.
 */
public final class Forms {
  private static final double WIDTH = 48;
  private static final double HEIGHT = 36;

  private final Graphics2D g;

  private Forms(Graphics2D g) {
    this.g = g;
  }

  /** Draws a verdict's form into {@code area}, whose sides should be as 4 to 3. */
  public static void draw(Graphics2D g, Verdict verdict, Rectangle2D area) {
    Forms forms = on(g, area);
    switch (verdict) {
      case PASS -> forms.pass();
      case MARGINAL -> forms.marginal();
      case FAIL -> forms.fail();
      case UNSAFE -> forms.unsafe();
      case VOID -> forms.nothing();
      case INCOMPLETE -> forms.incomplete();
    }
    forms.g.dispose();
  }

  /** Draws a disposition's form into {@code area}, whose sides should be as 4 to 3. */
  public static void draw(Graphics2D g, Disposition disposition, Rectangle2D area) {
    Forms forms = on(g, area);
    switch (disposition) {
      case REBUILD -> forms.rebuild();
      case REPLACE -> forms.replace();
      case RETURN -> forms.giveBack();
      case PENDING -> forms.pending();
    }
    forms.g.dispose();
  }

  /** Draws the sign for stored charge. */
  public static void drawCharge(Graphics2D g, Rectangle2D area) {
    Forms forms = on(g, area);
    forms.fill(new Color(0xF9A800), 24, 1.5, 46.5, 35, 1.5, 35);
    forms.line(2.6f, Ink.INK, true, 24, 2.8, 44.4, 33.7, 3.6, 33.7);
    forms.fill(Ink.INK, 26, 10.5, 18.5, 23.5, 24, 23.5, 22.3, 31.5, 31, 18.6, 25, 18.6);
    forms.g.dispose();
  }

  private static Forms on(Graphics2D g, Rectangle2D area) {
    Graphics2D copy = (Graphics2D) g.create();
    AffineTransform field = AffineTransform.getTranslateInstance(area.getX(), area.getY());
    field.scale(area.getWidth() / WIDTH, area.getHeight() / HEIGHT);
    copy.transform(field);
    return new Forms(copy);
  }

  private void pass() {
    frame();
    line(1.6f, Ink.INK, false, 2, 26, 46, 26);
    for (double x = 6; x <= 46; x += 4) {
      line(1, Ink.INK, false, x, 26, x - 2.4, 29.6);
    }
    for (int i = 0; i < 14; i++) {
      line(1.1f, Ink.INK, false, 5 + i * 3, 11, 5 + i * 3, 19.6 + i * 7 % 5 * 0.35);
    }
    line(5.5f, Ink.INK, false, 2, 10.5, 46, 10.5);
  }

  private void marginal() {
    frame();
    line(1.6f, Ink.INK, false, 2, 22.5, 46, 22.5);
    line(5.5f, Ink.INK, false, 2, 17.5, 33, 17.5);
    line(2.6f, Ink.INK, false, 37.5, 8.5, 37.5, 26.5);
    line(2.6f, Ink.INK, false, 32, 8.5, 43, 8.5);
    line(2.6f, Ink.INK, false, 32, 26.5, 43, 26.5);
  }

  private void fail() {
    line(2.4f, Ink.INK, false, 28, 28.5, 2, 28.5, 2, 2, 46, 2, 46, 28.5, 44.5, 28.5);
    line(1.6f, Ink.INK, false, 2, 17, 20, 17);
    line(1.6f, Ink.INK, false, 32.5, 17, 46, 17);
    line(7, Ink.INK, false, 2, 9, 15.5, 9, 37.5, 32.6);
  }

  private void unsafe() {
    fill(Ink.INK, 24, 1.5, 46.5, 35, 1.5, 35);
    line(4.4f, Ink.PAPER, false, 24, 12.5, 24, 24.5);
    dot(Ink.PAPER, 24, 29.6, 2.5);
  }

  private void nothing() {
    g.setColor(Ink.INK);
    Hatch.lines(g, new Rectangle2D.Double(2, 2, 44, 32), 7, 1.5f);
    frame();
  }

  private void incomplete() {
    line(2.4f, Ink.INK, false, 25, 2, 2, 2, 2, 34, 25, 34);
    dashes(2.4f, 28.5, 2, 46, 2, 46, 34, 28.5, 34);
    line(1.6f, Ink.INK, false, 2, 25, 25, 25);
    dashes(1.6f, 28.5, 25, 46, 25);
    line(5.5f, Ink.INK, false, 2, 12.5, 25, 12.5);
  }

  private void rebuild() {
    fill(Ink.INK, 2, 4, 46, 4, 46, 32, 2, 32);
    line(2.6f, Ink.PAPER, false, 27, 4, 27, 32);
    for (double y = 10; y <= 26; y += 8) {
      line(2.6f, Ink.PAPER, false, 20.5, y, 33.5, y);
    }
    dot(Ink.PAPER, 9.5, 18, 2.8);
  }

  private void replace() {
    fill(Ink.INK, 2, 2, 33, 2, 45, 9.2, 33, 16.4, 2, 16.4);
    dot(Ink.PAPER, 8.5, 9.2, 2.6);
    line(3, Ink.INK, true, 45, 20.9, 15.5, 20.9, 5, 27, 15.5, 33.1, 45, 33.1);
  }

  private void giveBack() {
    fill(Ink.INK, 2, 18, 17, 3, 46, 3, 46, 33, 17, 33);
    dot(Ink.PAPER, 38, 18, 2.6);
  }

  private void pending() {
    line(4, Ink.INK, false, 2, 2.5, 46, 2.5);
    line(3, Ink.INK, false, 24, 3, 24, 11);
    line(3, Ink.INK, true, 6, 15, 12, 10, 36, 10, 42, 15, 42, 34, 6, 34);
    Path2D hook = new Path2D.Double();
    hook.moveTo(19.5, 19.2);
    hook.curveTo(19.9, 14.2, 28.5, 14.2, 28.5, 19.2);
    hook.curveTo(28.5, 22.6, 24, 22.6, 24, 26.2);
    g.setColor(Ink.INK);
    g.setStroke(Ink.line(3));
    g.draw(hook);
    dot(Ink.INK, 24, 30.3, 2);
  }

  private void frame() {
    line(2.4f, Ink.INK, true, 2, 2, 46, 2, 46, 34, 2, 34);
  }

  private void line(float width, Color colour, boolean closed, double... points) {
    g.setColor(colour);
    g.setStroke(Ink.line(width));
    g.draw(path(closed, points));
  }

  private void dashes(float width, double... points) {
    float[] dashes = {4, 3.2f};
    g.setColor(Ink.INK);
    g.setStroke(
        new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
    g.draw(path(false, points));
  }

  private void fill(Color colour, double... points) {
    g.setColor(colour);
    g.fill(path(true, points));
  }

  private void dot(Color colour, double x, double y, double radius) {
    g.setColor(colour);
    g.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
  }

  private static Path2D path(boolean closed, double... points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.lineTo(points[i], points[i + 1]);
    }
    if (closed) {
      path.closePath();
    }
    return path;
  }
}
