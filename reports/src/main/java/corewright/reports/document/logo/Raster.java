package corewright.reports.document.logo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A logo of pixels. Its size is read before its pixels are: a small file can hold an image that no
 * memory does. What it carries besides pixels, as where it was photographed, is left behind.
 */
record Raster(BufferedImage image) implements Logo.Art {
  /** A sheet of 4 by 10 inches at 300 to the inch has less. */
  private static final long MOST_PIXELS = 4_000_000;

  /** Across 28 mm this is finer than printers print. */
  private static final int ENOUGH = 700;

  static Raster read(Path file, byte[] bytes) {
    try (ImageInputStream stream =
        ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        throw Logo.bad(
            file, 0, "there is no picture in it", "Save it again from the program that drew it");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        return new Raster(flat(checked(file, reader)));
      } finally {
        reader.dispose();
      }
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      throw Logo.bad(
          file,
          0,
          "its picture is broken, or of a kind that is not read (" + e.getMessage() + ")",
          "Save it again as PNG, in RGB colours");
    }
  }

  private static BufferedImage checked(Path file, ImageReader reader) throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if ((long) width * height > MOST_PIXELS) {
      throw Logo.bad(
          file,
          0,
          width + " by " + height + " pixels, and at most 4 million are read",
          "Save it smaller: 600 pixels across print sharply");
    }
    return reader.read(0);
  }

  /** On white and no larger than needed: nothing shines through on paper. */
  private static BufferedImage flat(BufferedImage image) {
    double scale = Math.min(1, (double) ENOUGH / Math.max(image.getWidth(), image.getHeight()));
    int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
    BufferedImage flat = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = flat.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    g.drawImage(image, 0, 0, width, height, null);
    g.dispose();
    return flat;
  }

  @Override
  public double aspect() {
    return (double) image.getWidth() / image.getHeight();
  }

  @Override
  public void draw(Graphics2D g, Rectangle2D area) {
    AffineTransform place = AffineTransform.getTranslateInstance(area.getX(), area.getY());
    place.scale(area.getWidth() / image.getWidth(), area.getHeight() / image.getHeight());
    // PDF/A forbids that a reader smooths it.
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
    g.drawImage(image, place, null);
  }
}
