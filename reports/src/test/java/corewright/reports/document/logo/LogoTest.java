package corewright.reports.document.logo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogoTest {
  @TempDir private Path folder;

  @Test
  void anImageOfFiftyMillionPixelsIsRefusedBeforeItIsUnpacked() throws Exception {
    Path file = folder.resolve("huge.png");
    ImageIO.write(
        new BufferedImage(10_000, 5_000, BufferedImage.TYPE_BYTE_BINARY), "png", file.toFile());
    assertTrue(Files.size(file) < 100_000, "a small file: " + Files.size(file));
    Mistake mistake = refused(file);
    assertEquals("10000 by 5000 pixels, and at most 4 million are read", mistake.message());
    assertEquals("Save it smaller: 600 pixels across print sharply", mistake.suggestion());
  }

  @Test
  void whatIsNoPictureIsRefusedWithWhatToDo() throws Exception {
    Path whole = folder.resolve("whole.png");
    ImageIO.write(new BufferedImage(300, 100, BufferedImage.TYPE_INT_ARGB), "png", whole.toFile());
    byte[] bytes = Files.readAllBytes(whole);
    Path broken = Files.write(folder.resolve("broken.png"), Arrays.copyOf(bytes, 60));
    assertTrue(refused(broken).message().startsWith("its picture is broken"));
    Path text = Files.writeString(folder.resolve("text.jpg"), "no picture");
    assertEquals("there is no picture in it", refused(text).message());
    assertEquals("it cannot be read", refused(folder.resolve("none.png")).message());
    Path large = Files.write(folder.resolve("large.png"), new byte[2_000_001]);
    assertTrue(refused(large).message().contains("at most 2000000 are read"));
    assertEquals(
        "it is none of .png, .jpg, .svg",
        refused(Files.writeString(folder.resolve("a.gif"), "GIF89a")).message());
    assertEquals(3, Logo.at(whole).aspect(), 1e-12);
  }

  @Test
  void aDrawingThatCouldFetchRunOrHideSomethingIsRefusedWithItsLine() throws Exception {
    Map<String, String> hostile =
        Map.of(
            "<script>alert(1)</script>", "<script> is not drawn",
            "<image href='http://x/y.png'/>", "<image> is not drawn",
            "<foreignObject/>", "<foreignObject> is not drawn",
            "<text>Mill</text>", "<text> is not drawn",
            "<use href='#a'/>", "<use> is not drawn",
            "<rect fill='url(#a)' width='1' height='1'/>", "the colour 'url(#a)' is not read",
            "<path d='M0 0 L x'/>", "its path is none from character 7 on",
            "<g transform='skewX(3)'/>", "the transform skewX is not read",
            "", "there is no shape in it");
    int i = 0;
    for (Map.Entry<String, String> one : hostile.entrySet()) {
      Mistake mistake = refused(svg("h" + i++, one.getKey()));
      assertEquals(one.getValue(), mistake.message(), one.getKey());
      assertTrue(mistake.line() >= 2, one.getKey());
    }
    Path bomb =
        Files.writeString(
            folder.resolve("bomb.svg"),
            "<!DOCTYPE svg [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;'>]>\n"
                + "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9"
                + " 9'><desc>&b;</desc></svg>");
    assertEquals("it is no SVG drawing", refused(bomb).message());
    Path none = Files.writeString(folder.resolve("none.svg"), "MILL YARD");
    assertEquals("it is no SVG drawing", refused(none).message());
  }

  /** SVG 1.1, 8.3: what each command draws, measured by the area that it encloses. */
  @Test
  void pathsEncloseWhatTheyShould() {
    double circle = Math.PI * 40 * 40;
    assertArea(circle, "M 10 50 A 40 40 0 1 1 90 50 A 40 40 0 1 1 10 50 Z");
    assertArea(circle, "M10,50a40 40 0 0 1 80 0a40 40 0 0 1-80 0z");
    assertArea(circle / 4, "M50 50 L90 50 A40 40 0 0 1 50 90 Z");
    assertArea(circle * 3 / 4, "M50 50 L90 50 A40 40 0 1 0 50 90 Z");
    assertArea(Math.PI * 40 * 20, "M10 50A40 20 0 1 0 90 50A40 20 0 1 0 10 50");
    // Turned by 90 degrees, radii grown to reach: 8.3.8 and F.6.6.
    assertArea(Math.PI * 40 * 80, "M10 50A20 10 90 1 0 90 50A20 10 90 1 0 10 50");
    assertArea(6400, "M10 10h80v80h-80z");
    assertArea(6400, "m10,10 80,0 0,80 -80,0z");
    assertArea(0.5 * 80 * 80, "M10 10H90V90Z");
    // A quadratic arch encloses two thirds of its box, a cubic one of that height three quarters.
    assertArea(80 * 40 * 2 / 3.0, "M10 10Q50 90 90 10Z");
    assertArea(80 * 60 * 4 / 5.0, "M10 10C10 90 90 90 90 10Z");
    // A smooth second half mirrors the first: the two lie on either side of the line.
    assertArea(0, "M10 50Q30 10 50 50T90 50");
  }

  @Test
  void aDrawingIsDrawnInItsOwnColoursAndPlaces() throws Exception {
    Logo logo =
        Logo.at(
            svg(
                "good",
                "<metadata><x xmlns='urn:x'/></metadata><g transform='translate(10 10)'><rect"
                    + " width='40' height='20' style='fill:#8c3d12'/></g><circle cx='80' cy='25'"
                    + " r='10' fill='none' stroke='#000' stroke-width='4'/>"));
    assertEquals(2, logo.aspect(), 1e-12);
    BufferedImage image = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
    var g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 200, 100);
    logo.draw(g, new Rectangle2D.Double(0, 0, 200, 100));
    assertEquals(0x8C3D12, image.getRGB(60, 40) & 0xFFFFFF);
    assertEquals(0xFFFFFF, image.getRGB(10, 10) & 0xFFFFFF);
    assertEquals(0xFFFFFF, image.getRGB(160, 50) & 0xFFFFFF);
    assertEquals(0x000000, image.getRGB(180, 50) & 0xFFFFFF);
  }

  private Path svg(String name, String inside) throws Exception {
    return Files.writeString(
        folder.resolve(name + ".svg"),
        "<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 50'>\n"
            + inside
            + "</svg>");
  }

  private static Mistake refused(Path file) {
    return assertThrows(BadFile.class, () -> Logo.at(file).aspect()).mistakes().get(0);
  }

  private static void assertArea(double expected, String path) {
    assertEquals(expected, area(PathData.read(path, Path2D.WIND_NON_ZERO)), 8, path);
  }

  /** By the shoelace formula over a fine polygon. */
  private static double area(Shape shape) {
    double sum = 0;
    double[] c = new double[6];
    double x0 = 0;
    double y0 = 0;
    double startX = 0;
    double startY = 0;
    PathIterator it = new FlatteningPathIterator(shape.getPathIterator(null), 0.001, 14);
    for (; !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        startX = c[0];
        startY = c[1];
      } else {
        double x = kind == PathIterator.SEG_CLOSE ? startX : c[0];
        double y = kind == PathIterator.SEG_CLOSE ? startY : c[1];
        sum += x0 * y - x * y0;
      }
      x0 = kind == PathIterator.SEG_CLOSE ? startX : c[0];
      y0 = kind == PathIterator.SEG_CLOSE ? startY : c[1];
    }
    sum += x0 * startY - startX * y0;
    return Math.abs(sum / 2);
  }
}
