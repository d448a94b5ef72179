package corewright.reports.document;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import corewright.bench.record.Disposition;
import corewright.bench.record.Verdict;
import corewright.reports.chart.Forms;
import corewright.reports.chart.Picture;
import corewright.reports.document.logo.Logo;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;

/**
 * Draws as vectors what a page leaves room for: {@code picture}, {@code charge}, {@code logo}, a
 * symbol by its name, or a verdict or disposition by its word.
 */
final class Drawings implements FSObjectDrawer {
  static final String TYPE = "application/x-drawing";

  /** Draws nothing: enough to lay a page out. */
  static final Drawings NONE = new Drawings(Optional.empty(), Optional.empty());

  private final Optional<Picture> picture;
  private final Optional<Logo> logo;

  Drawings(Optional<Picture> picture, Optional<Logo> logo) {
    this.picture = picture;
    this.logo = logo;
  }

  @Override
  public Map<Shape, String> drawObject(
      Element element,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    double across = width / dotsPerPixel;
    double down = height / dotsPerPixel;
    device.drawWithGraphics(
        (float) x,
        (float) y,
        (float) Math.ceil(across), // the library cuts off at whole pixels
        (float) Math.ceil(down),
        g -> draw(g, element.getAttribute("data"), across, down));
    return Map.of();
  }

  private void draw(Graphics2D g, String what, double width, double height) {
    Rectangle2D area = new Rectangle2D.Double(0, 0, width, height);
    if (Symbols.draw(g, what, area)) {
      return;
    }
    if (what.equals("picture")) {
      double scale = width / Picture.WIDTH;
      g.scale(scale, scale);
      picture.ifPresent(p -> p.draw(g, (int) Math.round(height / scale)));
    } else if (what.equals("logo")) {
      logo.ifPresent(own -> own.draw(g, area));
    } else if (what.equals("charge")) {
      Forms.drawCharge(g, area);
    } else if (Arrays.stream(Verdict.values()).anyMatch(v -> v.name().equals(what))) {
      Forms.draw(g, Verdict.valueOf(what), area);
    } else {
      Forms.draw(g, Disposition.valueOf(what), area);
    }
  }
}
