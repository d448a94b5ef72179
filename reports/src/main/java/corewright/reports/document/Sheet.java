package corewright.reports.document;

import corewright.reports.chart.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** One A4 page: lays the parts out and gives the picture the height that they leave. */
final class Sheet {
  /** An A4 page without its margins, less what rounding may cost, mm. */
  private static final double ROOM_MM = 297 - 12 - 9 - 0.6;

  private static final double TALLEST_MM = 88;
  private static final double LOWEST_MM = 58;

  /** How much of its usual length foreign text gets: less only where the page would overflow. */
  private static final double[] ROOMS = {1, 1, 0.6, 0.3};

  private static final String BODY = "body";

  private final Optional<Picture> picture;

  Sheet(Optional<Picture> picture) {
    this.picture = picture;
  }

  /**
   * Writes the page; nothing is left behind at {@code file} if that fails.
   *
   * @param pages makes the page for a given room for foreign text
   * @param parts fills it: the body
   */
  Path write(DoubleFunction<Page> pages, Function<Page, Element> parts, String title, Path file) {
    Document document = fitting(pages, parts, title);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Pdf.write(document, new Drawings(picture), bytes);
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      return Files.write(file, bytes.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException("the document " + file + " cannot be written", e);
    }
  }

  private Document fitting(
      DoubleFunction<Page> pages, Function<Page, Element> parts, String title) {
    for (int attempt = 0; ; attempt++) {
      Page page = pages.apply(ROOMS[attempt]);
      Element body = parts.apply(page);
      body.setAttribute("id", BODY);
      body.setAttribute("class", attempt == 0 ? "usual" : "tight");
      Document document = document(page, body, title);
      if (fits(document) || attempt == ROOMS.length - 1) {
        return document;
      }
    }
  }

  private static Document document(Page page, Element body, String title) {
    Markup m = page.markup();
    Element subject = m.tag("meta");
    subject.setAttribute("name", "description");
    subject.setAttribute("content", title);
    Element root =
        m.tag("html", m.tag("head", m.tag("title", title), subject, m.tag("style", css())), body);
    root.setAttribute("lang", page.locale().toLanguageTag());
    m.document().appendChild(root);
    return m.document();
  }

  /** The picture takes what the rest leaves; what it cannot take, the gap above the foot does. */
  private boolean fits(Document document) {
    Element root = document.getDocumentElement();
    Optional<Element> drawing = picture.map(p -> find(root, FigurePart.ID).orElseThrow());
    drawing.ifPresent(d -> height(d, LOWEST_MM));
    double free = ROOM_MM - Pdf.top_mm(document, Page.END);
    double picture_mm =
        drawing.isPresent() ? Math.min(TALLEST_MM - LOWEST_MM, Math.max(0, free)) : 0;
    drawing.ifPresent(d -> height(d, LOWEST_MM + picture_mm));
    height(find(root, Page.GAP).orElseThrow(), Math.max(0, free - picture_mm));
    return free >= 0;
  }

  private static void height(Element element, double mm) {
    element.setAttribute("style", String.format(Locale.ROOT, "height:%.1fmm", mm));
  }

  private static Optional<Element> find(Element from, String id) {
    if (from.getAttribute("id").equals(id)) {
      return Optional.of(from);
    }
    for (var child = from.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element) {
        Optional<Element> found = find(element, id);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static String css() {
    try (InputStream stream = Sheet.class.getResourceAsStream("sheet.css")) {
      if (stream == null) {
        throw new IllegalStateException("sheet.css is not in the program's jar");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("sheet.css cannot be read", e);
    }
  }
}
