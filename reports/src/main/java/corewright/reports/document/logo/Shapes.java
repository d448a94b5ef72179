package corewright.reports.document.logo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A logo of filled shapes.
 *
 * @param view what of the drawing is seen
 */
record Shapes(Rectangle2D view, List<Filled> filled) implements Logo.Art {

  /** One shape and its colour, in the order of drawing. */
  record Filled(Shape shape, Color colour) {}

  Shapes {
    filled = List.copyOf(filled);
  }

  @Override
  public double aspect() {
    return view.getWidth() / view.getHeight();
  }

  @Override
  public void draw(Graphics2D g, Rectangle2D area) {
    AffineTransform place = AffineTransform.getTranslateInstance(area.getX(), area.getY());
    place.scale(area.getWidth() / view.getWidth(), area.getHeight() / view.getHeight());
    place.translate(-view.getX(), -view.getY());
    for (Filled one : filled) {
      g.setColor(one.colour);
      g.fill(place.createTransformedShape(one.shape));
    }
  }
}
