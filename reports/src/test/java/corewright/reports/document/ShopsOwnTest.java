package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.document.logo.Logo;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop's own name, logo and colour on its documents, and what of them is refused. */
class ShopsOwnTest {
  private static final int VIOLET = 0x5B2A86;
  @TempDir private Path folder;

  /** WCAG 2.2: black on white is 21 to 1; #767676 is the lightest grey that passes 4.5. */
  @ParameterizedTest
  @CsvSource({"#000000, 21.0", "#767676, 4.54", "#777777, 4.48", "#FF0000, 4.00"})
  void contrastIsThatOfTheStandard(String hex, double ratio) {
    assertEquals(ratio, Colour.of(hex).contrast(), 0.01);
    assertEquals(ratio >= 4.5, Colour.of(hex).fault().isEmpty(), hex);
  }

  /** The usual signal colours and what is near them. */
  @ParameterizedTest
  @ValueSource(
      strings = {"#9B2423", "#1E6B45", "#005387", "#6B5900", "#C00000", "#006400", "#000080"})
  void aColourThatSpeaksOfSafetyIsTakenByNobody(String hex) {
    String fault = Colour.of(hex).fault().orElseThrow();
    assertTrue(fault.contains("speaks of people's safety"), fault);
  }

  @Test
  void aColourThatNobodyReadsIsRefusedWithItsContrast() {
    String fault = Colour.of("#E3B68F").fault().orElseThrow();
    assertEquals("its contrast on white paper is 1.8 to 1, and text needs 4.5", fault);
    assertEquals(Optional.empty(), new Colour(VIOLET).fault());
    assertEquals(Optional.empty(), Colour.INK.fault());
  }

  @Test
  void logoAndColourStandAtTheHeadOfEveryPageAndNowhereElse() throws Exception {
    for (Path logo : List.of(png(), svg())) {
      Shop shop = TestReportTest.SHOP.dressed(new Colour(VIOLET), Optional.of(Logo.at(logo)));
      Nine nine = new Nine(shop);
      Path file = nine.documents().certificate(nine.rebuilt(), folder);
      assertEquals(List.of(), Lasting.faults(file));
      BufferedImage page = page(file);
      double head = page.getHeight() * 26 / 297.0;
      assertTrue(share(page, 0, head, new Color(0xB06A3B)) > 300, "pixels of the logo");
      assertTrue(share(page, 0, head, new Color(VIOLET)) > 300, "pixels of the name");
      assertEquals(0, share(page, head, page.getHeight(), new Color(VIOLET)));
      assertEquals(0, share(page, head, page.getHeight(), new Color(0xB06A3B)));
      assertTrue(PdfText.of(file).contains("Mill Yard Rebuild 4 Mill Yard, Brackwater"));
    }
  }

  private Path png() throws Exception {
    BufferedImage image = new BufferedImage(900, 300, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(0xB06A3B));
    g.fillOval(0, 0, 900, 300);
    g.dispose();
    Path file = folder.resolve("logo.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private Path svg() throws Exception {
    return Files.writeString(
        folder.resolve("logo.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='90mm' height='30mm' viewBox='0 0 90 30'>"
            + "<path fill='#B06A3B' d='M0 15A45 15 0 1 0 90 15A45 15 0 1 0 0 15Z'/></svg>");
  }

  private static BufferedImage page(Path file) throws Exception {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFRenderer(document).renderImageWithDPI(0, 90);
    }
  }

  /** How many pixels between two heights have nearly a colour. */
  private static int share(BufferedImage page, double from, double to, Color colour) {
    int count = 0;
    for (int y = (int) from; y < (int) to; y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        Color c = new Color(page.getRGB(x, y));
        count +=
            Math.abs(c.getRed() - colour.getRed()) < 12
                    && Math.abs(c.getGreen() - colour.getGreen()) < 12
                    && Math.abs(c.getBlue() - colour.getBlue()) < 12
                ? 1
                : 0;
      }
    }
    return count;
  }
}
