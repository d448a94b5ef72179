package corewright.reports.document.logo;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The path of an SVG drawing.
 *
 * @see "Scalable Vector Graphics 1.1 (W3C), 8.3 Path data; F.6 Elliptical arcs"
 */
final class PathData {
  private static final Pattern NEXT =
      Pattern.compile(
          "[\\s,]*(?:([MmLlHhVvCcSsQqTtAaZz])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?))");

  private static final char NONE = 0;

  private final String data;
  private final Matcher next;
  private final Path2D path;
  private Point2D start = new Point2D.Double();
  private Point2D at = new Point2D.Double();
  private Point2D control = new Point2D.Double();
  private char before = 'M';

  private PathData(String data, int rule) {
    this.data = data;
    this.next = NEXT.matcher(data);
    this.path = new Path2D.Double(rule);
  }

  /**
   * @param rule a winding rule of {@link Path2D}
   * @throws IllegalArgumentException if it is no path, with where it ceases to be one
   */
  static Path2D read(String data, int rule) {
    PathData reading = new PathData(data, rule);
    reading.all();
    return reading.path;
  }

  private void all() {
    int end = data.stripTrailing().length();
    char command = NONE;
    while (position() < end) {
      char letter = letter();
      if (letter != NONE) {
        command = letter;
      } else if (command == NONE || command == 'Z' || command == 'z') {
        throw fault();
      }
      one(command);
      command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
    }
  }

  private void one(char command) {
    boolean relative = Character.isLowerCase(command);
    char kind = String.valueOf(command).toUpperCase(Locale.ROOT).charAt(0);
    if (path.getCurrentPoint() == null && kind != 'M') {
      throw fault();
    }
    switch (kind) {
      case 'M' -> move(point(relative));
      case 'L' -> line(point(relative));
      case 'H' -> line(new Point2D.Double(number() + (relative ? at.getX() : 0), at.getY()));
      case 'V' -> line(new Point2D.Double(at.getX(), number() + (relative ? at.getY() : 0)));
      case 'C' -> cubic(point(relative), point(relative), point(relative));
      case 'S' -> cubic(mirrored("CS"), point(relative), point(relative));
      case 'Q' -> quadratic(point(relative), point(relative));
      case 'T' -> quadratic(mirrored("QT"), point(relative));
      case 'A' -> arc(number(), number(), number(), number() != 0, number() != 0, point(relative));
      default -> close();
    }
    before = kind;
  }

  private void move(Point2D to) {
    path.moveTo(to.getX(), to.getY());
    start = to;
    at = to;
  }

  private void line(Point2D to) {
    path.lineTo(to.getX(), to.getY());
    at = to;
  }

  private void cubic(Point2D a, Point2D b, Point2D to) {
    path.curveTo(a.getX(), a.getY(), b.getX(), b.getY(), to.getX(), to.getY());
    control = b;
    at = to;
  }

  private void quadratic(Point2D a, Point2D to) {
    path.quadTo(a.getX(), a.getY(), to.getX(), to.getY());
    control = a;
    at = to;
  }

  private void close() {
    path.closePath();
    at = start;
  }

  /** The last control point, seen from the other side of where the pen is. */
  private Point2D mirrored(String kinds) {
    return kinds.indexOf(before) < 0
        ? at
        : new Point2D.Double(2 * at.getX() - control.getX(), 2 * at.getY() - control.getY());
  }

  private void arc(
      double radiusX, double radiusY, double turned_deg, boolean large, boolean sweep, Point2D to) {
    double rx = Math.abs(radiusX);
    double ry = Math.abs(radiusY);
    if (rx == 0 || ry == 0) {
      line(to);
      return;
    }
    double turned = Math.toRadians(turned_deg);
    double cos = Math.cos(turned);
    double sin = Math.sin(turned);
    double halfX = (at.getX() - to.getX()) / 2;
    double halfY = (at.getY() - to.getY()) / 2;
    double x = cos * halfX + sin * halfY;
    double y = cos * halfY - sin * halfX;
    double over = x * x / (rx * rx) + y * y / (ry * ry);
    double grown = Math.max(1, Math.sqrt(over));
    rx *= grown;
    ry *= grown;
    double below = x * x * ry * ry + y * y * rx * rx;
    double off = below == 0 ? 0 : Math.sqrt(Math.max(0, rx * rx * ry * ry / below - 1));
    double sign = large == sweep ? -off : off;
    double centreX = sign * rx * y / ry;
    double centreY = -sign * ry * x / rx;
    double from = Math.toDegrees(Math.atan2((y - centreY) / ry, (x - centreX) / rx));
    double until = Math.toDegrees(Math.atan2((-y - centreY) / ry, (-x - centreX) / rx));
    double extent = (until - from + 720) % 360;
    Arc2D arc =
        new Arc2D.Double(
            -rx, -ry, 2 * rx, 2 * ry, -from, sweep ? -extent : 360 - extent, Arc2D.OPEN);
    AffineTransform place =
        AffineTransform.getTranslateInstance(
            (at.getX() + to.getX()) / 2 + cos * centreX - sin * centreY,
            (at.getY() + to.getY()) / 2 + sin * centreX + cos * centreY);
    place.rotate(turned);
    path.append(place.createTransformedShape(arc), true);
    at = to;
  }

  private Point2D point(boolean relative) {
    double x = number();
    double y = number();
    return new Point2D.Double(x + (relative ? at.getX() : 0), y + (relative ? at.getY() : 0));
  }

  private int position() {
    return next.regionStart();
  }

  private char letter() {
    if (!next.lookingAt()) {
      throw fault();
    }
    if (next.group(1) == null) {
      return NONE;
    }
    next.region(next.end(), data.length());
    return data.charAt(next.regionStart() - 1);
  }

  private double number() {
    if (!next.lookingAt() || next.group(2) == null) {
      throw fault();
    }
    double number = Double.parseDouble(next.group(2));
    next.region(next.end(), data.length());
    return number;
  }

  private IllegalArgumentException fault() {
    return new IllegalArgumentException(
        "its path is none from character " + (position() + 1) + " on");
  }
}
