package corewright.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.chart.FigurePictures.Dot;
import corewright.reports.chart.FigurePictures.Point;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same picture as SVG, PNG and PDF; {@code -Dcorewright.pictures=FOLDER} keeps them. */
class FigurePicturesTest {
  private static final int COPPER = Ink.COPPER.getRGB();

  /** Wilson for 8 of 10 is 49.0 to 94.3 % (NIST/SEMATECH e-Handbook, 7.2.4.1). */
  private static final FigurePictures DOTS =
      FigurePictures.dots(
          "Rebuilds that can be sold, by build",
          "share with its 95 % interval (Wilson), %",
          100,
          List.of(new Dot("sd48 A1, n = 10", 80, 49.0, 94.3), new Dot("sd48 A2, n = 1", 0, 0, 79)));

  @TempDir private Path folder;

  @Test
  void aDotLiesWhereItsShareIsInEveryKindOfFile() throws Exception {
    Path kept = Path.of(System.getProperty("corewright.pictures", folder.toString()));
    for (String kind : List.of("svg", "png", "pdf")) {
      DOTS.write(kept.resolve("figures." + kind));
      fall().write(kept.resolve("fall." + kind));
    }
    String svg = Files.readString(kept.resolve("figures.svg"));
    assertTrue(svg.contains("<title>Rebuilds that can be sold, by build</title>"), svg);
    int[] png = copper(ImageIO.read(kept.resolve("figures.png").toFile()));
    try (PDDocument pdf = Loader.loadPDF(kept.resolve("figures.pdf").toFile())) {
      assertEquals(1, pdf.getNumberOfPages());
      int[] page = copper(new PDFRenderer(pdf).renderImage(0, 2));
      assertEquals(png[0], page[0], 4);
      assertEquals(png[1], page[1], 4);
    }
    assertTrue(png[1] > png[0] + 300, "80 % lies far to the right of 0 %");
  }

  /** Nine shifts about 48 V and one that is out; a chart of one shift has no limits yet. */
  @Test
  void aChartShowsEachShiftOnce() throws Exception {
    Path file = folder.resolve("control.png");
    List<Double> shifts = List.of(48.0, 48.1, 48.0, 48.1, 48.0, 48.1, 48.0, 48.1, 48.0, 47.0);
    List<Double> lines = List.of(47.8, 48.05, 48.3);
    FigurePictures.control("G1", "V", shifts, lines, Set.of(9)).write(file);
    int[] marked = copper(ImageIO.read(file.toFile()));
    FigurePictures.control("G1", "V", shifts, lines, Set.of()).write(file);
    assertEquals(marked[1], copper(ImageIO.read(file.toFile()))[1], "the same points");
    FigurePictures.control("G1", "V", List.of(48.0), List.of(), Set.of()).write(file);
    int[] one = copper(ImageIO.read(file.toFile()));
    assertTrue(one[1] - one[0] < 20, "one shift is one dot");
  }

  @Test
  void anotherKindOfFileIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> DOTS.write(folder.resolve("figures.bmp")));
  }

  private static FigurePictures fall() {
    return FigurePictures.fall(
        "Still in service",
        "months in service",
        "share, %",
        List.of(
            new Point(0, 100, 100, 100), new Point(6, 85.7, 62, 95), new Point(7, 80.7, 56, 92)),
        List.of(new Point(0, 100, 100, 100), new Point(3.5, 92, 92, 92), new Point(7, 81, 81, 81)));
  }

  /** The leftmost and the rightmost pixel of the dots' colour. */
  private static int[] copper(BufferedImage image) {
    int[] ends = {Integer.MAX_VALUE, -1};
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        if ((image.getRGB(x, y) | 0xFF000000) == COPPER) {
          ends[0] = Math.min(ends[0], x);
          ends[1] = Math.max(ends[1], x);
        }
      }
    }
    return ends;
  }
}
