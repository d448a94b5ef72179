package corewright.reports.document;

import corewright.reports.chart.Picture;
import corewright.reports.document.logo.Logo;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** One page: lays the parts out and gives the picture the height that they leave. */
final class Sheet {
  /** What the picture may take on A4; a lower sheet takes what it lacks from the picture. */
  private static final double TALLEST_MM = 88;

  private static final double LOWEST_MM = 58;

  private static final String BODY = "body";

  private final Paper paper;
  private final Optional<Picture> picture;
  private final Optional<Logo> logo;

  Sheet(Paper paper, Optional<Picture> picture, Optional<Logo> logo) {
    this.paper = paper;
    this.picture = picture;
    this.logo = logo;
  }

  /**
   * The finished pages.
   *
   * @param pages makes the page for a given room for foreign text
   * @param parts fills it: the body
   */
  byte[] pdf(Function<Room, Page> pages, Function<Page, Element> parts, String title) {
    return Pdf.of(fitting(pages, parts, title), new Drawings(picture, logo));
  }

  /** Writes them; nothing is left behind at {@code file} if that fails. */
  Path write(Function<Room, Page> pages, Function<Page, Element> parts, String title, Path file) {
    return Pdf.keep(pdf(pages, parts, title), file);
  }

  private Document fitting(
      Function<Room, Page> pages, Function<Page, Element> parts, String title) {
    for (int attempt = 0; ; attempt++) {
      Page page = pages.apply(Room.TRIED.get(attempt));
      Element body = parts.apply(page);
      body.setAttribute("id", BODY);
      body.setAttribute("class", attempt == 0 ? "usual" : "tight");
      Document document = page.markup().page(title, page.locale(), paper.css() + css(), body);
      if (fits(document) || attempt == Room.TRIED.size() - 1) {
        return document;
      }
    }
  }

  /** The picture takes what the rest leaves; what it cannot take, the gap above the foot does. */
  private boolean fits(Document document) {
    Element root = document.getDocumentElement();
    Optional<Element> drawing = picture.map(p -> find(root, FigurePart.ID).orElseThrow());
    double lowest = LOWEST_MM - (Paper.A4.height_mm() - paper.height_mm());
    drawing.ifPresent(d -> height(d, lowest));
    double free = paper.room_mm() - Pdf.top_mm(document, Page.END);
    double picture_mm =
        drawing.isPresent() ? Math.min(TALLEST_MM - LOWEST_MM, Math.max(0, free)) : 0;
    drawing.ifPresent(d -> height(d, lowest + picture_mm));
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
    return Markup.css("sheet.css");
  }
}
