package corewright.reports.document.logo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads an SVG drawing of plain shapes with plain colours. Whatever could fetch, run or hide
 * something is refused with its line; there is no way from such a file to another one.
 */
final class SvgReader {
  private static final String REMEDY =
      "Turn text into paths and effects into plain shapes, or save it as PNG";
  private static final Set<String> SHAPES =
      Set.of("path", "rect", "circle", "ellipse", "polygon", "polyline", "line");
  private static final Set<String> SAYS_NOTHING =
      Set.of("title", "desc", "metadata", "defs", "namedview");
  private static final int MOST_SHAPES = 2000;
  private static final String SVG = "http://www.w3.org/2000/svg";

  private final Path file;
  private final XMLStreamReader xml;
  private final Deque<SvgStyle> styles = new ArrayDeque<>();
  private final List<Shapes.Filled> filled = new ArrayList<>();
  private int line = 1;
  private Optional<Rectangle2D> view = Optional.empty();

  private SvgReader(Path file, XMLStreamReader xml) {
    this.file = file;
    this.xml = xml;
  }

  static Shapes read(Path file, byte[] bytes) {
    XMLInputFactory factory = XMLInputFactory.newInstance();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
      try {
        return new SvgReader(file, xml).all();
      } finally {
        xml.close();
      }
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
      throw Logo.bad(file, line, "it is no SVG drawing", "Save it again as plain SVG, or as PNG");
    }
  }

  private Shapes all() throws XMLStreamException {
    styles.push(SvgStyle.USUAL);
    while (xml.hasNext()) {
      int event = xml.next();
      line = Math.max(line, xml.getLocation().getLineNumber());
      if (event == XMLStreamConstants.START_ELEMENT) {
        begin();
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        styles.pop();
      }
    }
    Rectangle2D seen = view.orElseThrow(() -> bad("it has no viewBox and no size", REMEDY));
    if (filled.isEmpty()) {
      throw bad("there is no shape in it", REMEDY);
    }
    return new Shapes(seen, filled);
  }

  private void begin() throws XMLStreamException {
    String name = xml.getLocalName();
    String space = xml.getNamespaceURI();
    if (SAYS_NOTHING.contains(name) || (space != null && !space.isEmpty() && !space.equals(SVG))) {
      pass();
      return;
    }
    if (view.isEmpty() && !name.equals("svg")) {
      throw bad("it is no SVG drawing", "Save it again as plain SVG, or as PNG");
    }
    try {
      SvgStyle style = styles.element().with(this::attribute);
      styles.push(style);
      if (name.equals("svg")) {
        view = Optional.of(view.orElse(seen()));
      } else if (SHAPES.contains(name)) {
        draw(shape(name, style), style);
      } else if (!name.equals("g") && !name.equals("a")) {
        throw bad("<" + name + "> is not drawn", REMEDY);
      }
    } catch (IllegalArgumentException e) {
      throw bad(String.valueOf(e.getMessage()), REMEDY);
    }
  }

  /** Passes an element over with all that is in it. */
  private void pass() throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = xml.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    }
  }

  private Rectangle2D seen() {
    String box = attribute("viewBox");
    double[] v =
        box.isEmpty()
            ? new double[] {0, 0, number("width"), number("height")}
            : SvgStyle.numbers(box);
    if (v.length != 4 || !(v[2] > 0) || !(v[3] > 0) || v[2] / v[3] > 20 || v[3] / v[2] > 20) {
      throw new IllegalArgumentException("its viewBox is no size that a letterhead can hold");
    }
    return new Rectangle2D.Double(v[0], v[1], v[2], v[3]);
  }

  private void draw(Shape shape, SvgStyle style) {
    if (filled.size() > MOST_SHAPES) {
      throw bad("it has more than " + MOST_SHAPES + " shapes", "Simplify it, or save it as PNG");
    }
    style.fill().ifPresent(colour -> add(shape, style, colour));
    style
        .stroke()
        .ifPresent(
            colour ->
                add(
                    new BasicStroke((float) style.width()).createStrokedShape(shape),
                    style,
                    colour));
  }

  private void add(Shape shape, SvgStyle style, Color colour) {
    filled.add(new Shapes.Filled(style.place().createTransformedShape(shape), colour));
  }

  private Shape shape(String name, SvgStyle style) {
    return switch (name) {
      case "path" -> PathData.read(attribute("d"), style.rule());
      case "rect" -> {
        double round = 2 * number("rx");
        yield new RoundRectangle2D.Double(
            number("x"), number("y"), number("width"), number("height"), round, round);
      }
      case "circle" -> about(number("cx"), number("cy"), number("r"), number("r"));
      case "ellipse" -> about(number("cx"), number("cy"), number("rx"), number("ry"));
      case "line" -> {
        Path2D line = new Path2D.Double();
        line.moveTo(number("x1"), number("y1"));
        line.lineTo(number("x2"), number("y2"));
        yield line;
      }
      default -> corners(SvgStyle.numbers(attribute("points")), name.equals("polygon"), style);
    };
  }

  private static Shape about(double x, double y, double rx, double ry) {
    return new Ellipse2D.Double(x - rx, y - ry, 2 * rx, 2 * ry);
  }

  private static Shape corners(double[] points, boolean closed, SvgStyle style) {
    Path2D path = new Path2D.Double(style.rule());
    for (int i = 0; i + 1 < points.length; i += 2) {
      if (i == 0) {
        path.moveTo(points[0], points[1]);
      } else {
        path.lineTo(points[i], points[i + 1]);
      }
    }
    if (closed && points.length > 1) {
      path.closePath();
    }
    return path;
  }

  private String attribute(String name) {
    String value = xml.getAttributeValue(null, name);
    return value == null ? "" : value.strip();
  }

  /** A length; 0 where it is not given. */
  private double number(String name) {
    String value = attribute(name).replaceAll("(px|pt|mm)$", "");
    return value.isEmpty() ? 0 : SvgStyle.numbers(value)[0];
  }

  private corewright.files.BadFile bad(String message, String remedy) {
    return Logo.bad(file, line, message, remedy);
  }
}
