package corewright.station.web;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import javax.imageio.ImageIO;

/**
 * Draws the manual's pictures anew: every page of a shop that has something to show, on a desk's
 * screen, a large one and a phone, two in the dark. {@code .ci/pictures} runs it; it is no test.
 */
public final class ManualPictures {
  private static final List<Size> SIZES =
      List.of(
          new Size(1366, 768, ""), new Size(1920, 1080, "-large"), new Size(390, 844, "-phone"));

  /** What a screen measures, in pixels of a page, and how its pictures' names end. */
  private record Size(int width, int height, String suffix) {}

  private final Browser browser;
  private final Path to;
  private final Predicate<String> wanted;

  private ManualPictures(Browser browser, Path to, Predicate<String> wanted) {
    this.browser = browser;
    this.to = to;
    this.wanted = wanted;
  }

  /**
   * Draws them.
   *
   * @param args the folder of a demonstration's shop, and where the pictures go; then the names of
   *     those that are wanted, all if none is named
   */
  public static void main(String[] args) throws IOException {
    Path shop = Path.of(args[0]);
    List<String> names = List.of(args).subList(2, args.length);
    try (Visit first = Visit.to(Files.createTempDirectory("first"));
        Visit visit = Visit.asOwner(shop);
        Browser browser = Browser.open()) {
      ManualPictures pictures =
          new ManualPictures(
              browser,
              Files.createDirectories(Path.of(args[1])),
              name -> names.isEmpty() || names.contains(name));
      pictures.draw("first-day", first.at("/first?code=2f61c0a95be3"));
      pictures.draw("sign-in", visit.at("/in"));
      browser.signIn(visit);
      pictures.all(new ManualShop(visit, browser));
    }
  }

  private void all(ManualShop shop) throws IOException {
    draw("received", shop.at("/counter/" + shop.receive()));
    for (Map.Entry<String, String> page : ManualShop.PAGES.entrySet()) {
      draw(page.getKey(), shop.at(page.getValue()));
    }
    for (Map.Entry<String, String> page : shop.dropped().entrySet()) {
      draw(page.getKey(), page.getValue());
    }
    dark(shop);
    shop.open();
    draw("rebuild-open", shop.at("/rebuild/" + ManualShop.TO_REBUILD));
    shop.claim();
    draw("claim", shop.at("/cameback/" + ManualShop.TO_RETURN));
    String tag = shop.practise();
    draw("read-by-hand", shop.at(ManualShop.BENCH + "/hand"));
    shop.run(tag);
    still("bench-live");
    shop.untilOver();
    still("bench-over");
    draw("behind", shop.at(shop.figure()));
    draw("practised", shop.at("/practice/" + tag));
    draw("practised-told", shop.at("/practice/" + tag + "?verdict=FAIL&disposition=REBUILD"));
  }

  private void dark(ManualShop shop) throws IOException {
    browser.size(1366, 768);
    browser.go(shop.at("/"));
    mode("dark");
    for (String name : List.of("today", "what-it-did")) {
      if (wanted.test(name)) {
        browser.go(shop.at(ManualShop.PAGES.get(name)));
        save(name + "-dark");
      }
    }
    mode("light");
  }

  private void mode(String mode) {
    browser.one("form[action='/mode'] button").click();
    browser.until(
        () -> browser.one("html").getDomAttribute("data-mode").equals(mode), "turned " + mode);
  }

  private void draw(String name, String address) throws IOException {
    if (wanted.test(name)) {
      for (Size size : SIZES) {
        browser.size(size.width, size.height);
        browser.go(address);
        save(name + size.suffix);
      }
    }
  }

  /** A page that would be another if it were asked for again, or a moment later. */
  private void still(String name) throws IOException {
    Map<String, byte[]> seen = new LinkedHashMap<>();
    for (Size size : SIZES) {
      browser.size(size.width, size.height);
      seen.put(name + size.suffix, browser.picture());
    }
    if (wanted.test(name)) {
      for (Map.Entry<String, byte[]> picture : seen.entrySet()) {
        write(picture.getKey(), picture.getValue());
      }
    }
  }

  private void save(String name) throws IOException {
    browser.until(
        () ->
            Boolean.TRUE.equals(
                browser
                    .driver()
                    .executeScript(
                        "return document.fonts.status === 'loaded' && [...document.images]"
                            + ".every(i => i.complete || i.loading === 'lazy')")),
        "drawn");
    write(name, browser.picture());
  }

  private void write(String name, byte[] picture) throws IOException {
    BufferedImage seen = ImageIO.read(new ByteArrayInputStream(picture));
    ImageIO.write(FewColours.of(seen), "png", to.resolve(name + ".png").toFile());
  }
}
