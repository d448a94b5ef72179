package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Verdict;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The first page of each document as it was looked at and found good, 60 dots to the inch, in
 * sixteen greys. Within any 8 by 8 pixels (3.4 mm) the greys may differ by 10 of 255 on average: a
 * renderer's edges do, a moved line or another figure differs by more. To take new pictures after
 * looking at them: {@code -Dcorewright.golden=FOLDER} writes them.
 */
class GoldenTest {
  private static final float DPI = 60;
  private static final int CELL = 8;
  private static final double TOLERANCE = 10;
  private static final int MOST_BYTES = 40_000;

  @TempDir private Path folder;

  @Test
  void everyDocumentLooksAsItDidWhenSomebodyLookedAtIt() throws Exception {
    Map<String, String> other = new TreeMap<>();
    for (Map.Entry<String, Path> file : new Nine(TestReportTest.SHOP).write(folder).entrySet()) {
      BufferedImage page = page(file.getValue());
      String kept = System.getProperty("corewright.golden");
      if (kept != null) {
        Files.createDirectories(Path.of(kept));
        ImageIO.write(page, "png", Path.of(kept, file.getKey() + ".png").toFile());
      } else {
        BufferedImage golden = golden(file.getKey());
        List<String> cells = different(golden, page);
        if (!cells.isEmpty()) {
          other.put(file.getKey(), String.join(" ", cells.subList(0, Math.min(5, cells.size()))));
        }
      }
    }
    assertEquals(Map.of(), other, "cells at millimetres from the left and the top");
  }

  /** The measure itself: it must see a line that moved by half a millimetre, and one figure. */
  @Test
  void aMovedLineOrAnotherFigureIsSeen() throws Exception {
    BufferedImage golden = golden("certificate");
    assertEquals(List.of(), different(golden, golden));
    BufferedImage moved = copy(golden);
    Graphics2D g = moved.createGraphics();
    g.drawImage(golden.getSubimage(38, 470, 420, 12), 38, 471, null);
    g.dispose();
    assertTrue(!different(golden, moved).isEmpty(), "a line of a table one pixel lower");

    Nine nine = new Nine(TestReportTest.SHOP);
    Path as = nine.documents().certificate(nine.rebuilt(), folder);
    Shop s = TestReportTest.SHOP;
    Shop longer =
        new Shop(
            s.name(),
            s.address(),
            s.contact(),
            s.complaints(),
            24,
            s.warrantyTerms(),
            s.region(),
            false);
    Path another = new Nine(longer).documents().certificate(nine.rebuilt(), folder.resolve("b"));
    List<String> cells = different(page(as), page(another));
    assertTrue(!cells.isEmpty(), "covered until 2028 instead of 2027");
    assertTrue(cells.size() <= 4, "and nothing else: " + cells);
  }

  /** Without colour, and small as in a table, no two forms look alike. */
  @Test
  void verdictsAreToldApartWithoutColour() {
    List<BufferedImage> forms = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      BufferedImage image = new BufferedImage(32, 24, BufferedImage.TYPE_BYTE_GRAY);
      Graphics2D g = image.createGraphics();
      g.setColor(java.awt.Color.WHITE);
      g.fillRect(0, 0, 32, 24);
      corewright.reports.chart.Forms.draw(g, verdict, new Rectangle2D.Double(0, 0, 32, 24));
      g.dispose();
      forms.add(image);
    }
    for (int i = 0; i < forms.size(); i++) {
      for (int k = i + 1; k < forms.size(); k++) {
        int cells = different(forms.get(i), forms.get(k)).size();
        assertTrue(cells >= 3, Verdict.values()[i] + " and " + Verdict.values()[k]);
      }
    }
  }

  private static BufferedImage page(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      BufferedImage grey = new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
      for (int y = 0; y < grey.getHeight(); y++) {
        for (int x = 0; x < grey.getWidth(); x++) {
          grey.getRaster().setSample(x, y, 0, (grey.getRaster().getSample(x, y, 0) + 8) / 17 * 17);
        }
      }
      return grey;
    }
  }

  private static BufferedImage golden(String name) throws IOException {
    try (InputStream stream = GoldenTest.class.getResourceAsStream("golden/" + name + ".png")) {
      assertTrue(stream != null, "golden/" + name + ".png");
      byte[] bytes = stream.readAllBytes();
      assertTrue(bytes.length < MOST_BYTES, name + " has " + bytes.length + " bytes");
      return ImageIO.read(new java.io.ByteArrayInputStream(bytes));
    }
  }

  private static BufferedImage copy(BufferedImage image) {
    BufferedImage copy =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    image.copyData(copy.getRaster());
    return copy;
  }

  /** Where two pictures differ, in whole millimetres from the left and the top. */
  private static List<String> different(BufferedImage a, BufferedImage b) {
    assertEquals(a.getWidth() + "x" + a.getHeight(), b.getWidth() + "x" + b.getHeight());
    List<String> cells = new ArrayList<>();
    for (int y = 0; y + CELL <= a.getHeight(); y += CELL) {
      for (int x = 0; x + CELL <= a.getWidth(); x += CELL) {
        int sum = 0;
        for (int i = 0; i < CELL * CELL; i++) {
          int dx = x + i % CELL;
          int dy = y + i / CELL;
          sum += Math.abs(a.getRaster().getSample(dx, dy, 0) - b.getRaster().getSample(dx, dy, 0));
        }
        if (sum > TOLERANCE * CELL * CELL) {
          cells.add(Math.round(x / DPI * 25.4) + "," + Math.round(y / DPI * 25.4));
        }
      }
    }
    return cells;
  }
}
