package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** The system's Chromium without a screen. Skipped where it is missing, but not where CI is set. */
public final class Browser implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Duration WAIT = Duration.ofSeconds(20);

  private final Path profile;
  private final ChromeDriver driver;

  private Browser(Path profile, ChromeDriver driver) {
    this.profile = profile;
    this.driver = driver;
  }

  /** Opens one with a profile of its own. */
  public static Browser open() {
    boolean there = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
    assertTrue(
        there || !"true".equals(System.getenv("CI")), "chromium and chromedriver are missing");
    assumeTrue(there, "chromium and chromedriver are missing");
    try {
      Path profile = Files.createTempDirectory("corewright-browser");
      ChromeOptions options = new ChromeOptions();
      options.setBinary(CHROMIUM.toString());
      options.addArguments(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--disable-dev-shm-usage",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--lang=en",
          "--user-data-dir=" + profile);
      ChromeDriverService service =
          new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
      Browser browser = new Browser(profile, new ChromeDriver(service, options));
      browser.size(1366, 768);
      return browser;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public ChromeDriver driver() {
    return driver;
  }

  /** The inner size of the window, in CSS pixels. */
  public void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 700));
    driver.manage().window().setSize(new Dimension(width, height));
  }

  public void go(String address) {
    driver.get(address);
  }

  /** Signs in as the owner that {@link Visit#asOwner} has made. */
  public void signIn(Visit visit) {
    go(visit.at("/in"));
    one("#name").sendKeys(Visit.OWNER);
    one("#password").sendKeys(Visit.PASSWORD);
    one("form .btn").click();
    until(() -> driver.getCurrentUrl().equals(visit.at("/")), "signed in");
  }

  /** The first element that a CSS selector finds. */
  public WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  public List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** Waits until something is so. */
  public void until(BooleanSupplier so, String what) {
    until(so, what, WAIT);
  }

  /** Waits for something that takes its time, as a run does. */
  public void until(BooleanSupplier so, String what, Duration most) {
    long end = System.nanoTime() + most.toNanos();
    while (!isSo(so)) {
      if (System.nanoTime() > end) {
        throw new AssertionError(
            "never " + what + " at " + driver.getCurrentUrl() + "\n" + text("body"));
      }
      try {
        Thread.sleep(40);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  /** A page that is being left is not yet so. */
  private static boolean isSo(BooleanSupplier so) {
    try {
      return so.getAsBoolean();
    } catch (StaleElementReferenceException | NoSuchElementException leaving) {
      return false;
    }
  }

  /** What is to be read in an element. */
  public String text(String selector) {
    return one(selector).getText();
  }

  /** The page as it is seen, as PNG. */
  public byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /**
   * What axe-core finds serious or critical on the page, in the light and in the dark, each a line;
   * WCAG 2.2, A and AA. axe-core 4.11, by others. A page is turned dark where it stands: it is told
   * by one attribute alone, which changes colours and nothing else, so that the rules about colours
   * are asked again there.
   */
  @SuppressWarnings("unchecked")
  public List<String> barriers() {
    driver.executeScript(axe());
    return (List<String>)
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1], root = document.documentElement,"
                + " was = root.dataset.mode; const look = async (mode) => { root.dataset.mode ="
                + " mode; const r = await axe.run(document, {runOnly: mode === 'light' ?"
                + " ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa'] :"
                + " ['color-contrast','link-in-text-block']});"
                + " return r.violations.filter(v => v.impact === 'serious' || v.impact ==="
                + " 'critical').flatMap(v => v.nodes.map(n => mode + ' ' + v.id + ': ' + n.target"
                + " + ' ' + n.failureSummary)); };"
                + " (async () => { try { done([...await look('light'), ...await look('dark')]); }"
                + " catch (e) { done(['axe: ' + e]); } finally { root.dataset.mode = was; } })();");
  }

  private static String axe() {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      files.sorted((a, b) -> b.compareTo(a)).forEach(f -> f.toFile().delete());
    } catch (IOException | UncheckedIOException left) {
      // a folder of the system's temporary ones
    }
  }
}
