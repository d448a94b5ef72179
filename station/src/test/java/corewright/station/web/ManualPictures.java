package corewright.station.web;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * Draws the manual's pictures anew: every place of a shop that has something to show, on a desk's
 * screen, a large one, a phone and in the dark. {@code .ci/pictures} runs it; it is no test.
 */
public final class ManualPictures {
  private static final int COLOURS = 160;

  /** What is shown, and under which name. */
  private static final Map<String, String> PAGES =
      Map.ofEntries(
          Map.entry("today", "/"),
          Map.entry("counter", "/counter"),
          Map.entry("which-build", "/build/U-00007P"),
          Map.entry("bench", "/bench/emulated-sd48?tag=U-00004V"),
          Map.entry("what-it-did", "/did/U-00003X"),
          Map.entry("what-it-did-void", "/did/U-00006R"),
          Map.entry("what-we-do", "/decide/U-00002Z"),
          Map.entry("rebuild", "/rebuild/U-00002Z"),
          Map.entry("hand-over", "/handover/U-000012"),
          Map.entry("came-back", "/cameback"),
          Map.entry("the-shop", "/shop"),
          Map.entry("house-rules", "/rules"),
          Map.entry("practice", "/practice"),
          Map.entry("life", "/unit/U-00004V"));

  private ManualPictures() {}

  /**
   * Draws them.
   *
   * @param args the folder of a demonstration's shop, and where the pictures go
   */
  public static void main(String[] args) throws IOException {
    Path to = Files.createDirectories(Path.of(args[1]));
    try (Visit visit = Visit.asOwner(Path.of(args[0]));
        Browser browser = Browser.open()) {
      browser.signIn(visit);
      all(browser, visit, 1366, 768, to, "");
      all(browser, visit, 390, 844, to, "-phone");
      browser.size(1920, 1080);
      draw(browser, visit, "today", to, "-large");
      draw(browser, visit, "what-it-did", to, "-large");
      browser.size(1366, 768);
      browser.go(visit.at("/"));
      browser.one("form[action='/mode'] button").click();
      browser.until(
          () -> browser.one("html").getDomAttribute("data-mode").equals("dark"), "turned dark");
      draw(browser, visit, "today", to, "-dark");
      draw(browser, visit, "what-it-did", to, "-dark");
    }
  }

  private static void all(
      Browser browser, Visit visit, int width, int height, Path to, String suffix)
      throws IOException {
    browser.size(width, height);
    for (String name : PAGES.keySet().stream().sorted().toList()) {
      draw(browser, visit, name, to, suffix);
    }
  }

  private static void draw(Browser browser, Visit visit, String name, Path to, String suffix)
      throws IOException {
    browser.go(visit.at(PAGES.get(name)));
    browser.until(
        () ->
            Boolean.TRUE.equals(
                browser
                    .driver()
                    .executeScript(
                        "return document.fonts.status === 'loaded' && [...document.images]"
                            + ".every(i => i.complete)")),
        "drawn");
    BufferedImage seen = ImageIO.read(new ByteArrayInputStream(browser.picture()));
    ImageIO.write(few(seen), "png", to.resolve(name + suffix + ".png").toFile());
  }

  /** The same in the colours that it has most of: a page of this look needs few. */
  private static BufferedImage few(BufferedImage seen) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        counts.merge(seen.getRGB(x, y), 1, Integer::sum);
      }
    }
    List<Integer> most = new ArrayList<>(counts.keySet());
    most.sort(Comparator.comparing((Integer c) -> -counts.get(c)).thenComparing(c -> c));
    int[] palette = most.stream().limit(COLOURS).mapToInt(Integer::intValue).toArray();
    IndexColorModel model =
        new IndexColorModel(8, palette.length, palette, 0, false, -1, DataBuffer.TYPE_BYTE);
    BufferedImage flat =
        new BufferedImage(
            seen.getWidth(), seen.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        int colour = seen.getRGB(x, y);
        int index = nearest.computeIfAbsent(colour, c -> nearest(palette, c));
        flat.getRaster().setSample(x, y, 0, index);
      }
    }
    return flat;
  }

  private static int nearest(int[] palette, int colour) {
    int best = 0;
    long least = Long.MAX_VALUE;
    for (int i = 0; i < palette.length; i++) {
      long red = (palette[i] >> 16 & 255) - (colour >> 16 & 255);
      long green = (palette[i] >> 8 & 255) - (colour >> 8 & 255);
      long blue = (palette[i] & 255) - (colour & 255);
      long apart = red * red + green * green + blue * blue;
      if (apart < least) {
        least = apart;
        best = i;
      }
    }
    return best;
  }
}
