package corewright.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.LogAnalysis;
import corewright.bench.log.LogFamily;
import corewright.bench.log.LogReading;
import corewright.bench.log.LogRequest;
import corewright.bench.log.Window;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.LogText;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class LogChartsTest {
  private static final LogFamily FAMILY = new LogFamily("sd48", 48, 12.5, 10, 9);

  /** The output's colour as the file has it: #8C3D12. */
  private static final String COPPER = "rgb(140,61,18)";

  /** A sample every quarter of a second; cranks from 5 to 10 s. */
  private static final double STEP_S = 0.25;

  @TempDir private Path folder;

  @Test
  void everySampleIsADotAndTheJudgedOnesAreFilled() throws Exception {
    LogReading log = read(10.8, -1, "Boost V");
    Window judged = log.cranks().get(0).window().orElseThrow();
    Document svg = svg(List.of(log));
    double end_s = log.cranks().get(0).end_s();
    long shown = count(log.cranks().get(0).start_s() - 2, end_s + 2);
    long within = count(judged.start_s(), judged.end_s());
    assertEquals(within, outputDots(svg, COPPER));
    assertEquals(shown - within, outputDots(svg, "white"));
    assertEquals(
        "This log supports a fault of the module.",
        svg.getElementsByTagName("title").item(0).getTextContent());
  }

  @Test
  void nothingIsDrawnFromDotToDot() throws Exception {
    Document svg = svg(List.of(read(10.8, -1, "Boost V")));
    for (String curve : List.of("polyline", "line", "path", "polygon")) {
      NodeList found = svg.getElementsByTagName(curve);
      for (int i = 0; i < found.getLength(); i++) {
        Element e = (Element) found.item(i);
        assertFalse(e.getAttribute("stroke").equals(COPPER), curve + " in copper");
      }
    }
  }

  @Test
  void aVoidCrankIsVeiledAndSaysHowLowTheSupplyWas() throws Exception {
    LogReading log = read(8.2, -1, "Boost V");
    BufferedImage picture = png(List.of(log));
    // A row of the window above the limit: hatched where void, plain where judged and nothing fell.
    int hatched = dark(picture, 400, 750, 300);
    assertTrue(hatched > 40 && hatched < 200, "hatched pixels in a row of 350: " + hatched);
    assertEquals(0, dark(png(List.of(read(10.8, 0, "Boost V"))), 400, 750, 300));
  }

  private static int dark(BufferedImage picture, int fromX, int toX, int y) {
    int dark = 0;
    for (int x = fromX; x < toX; x++) {
      dark += grey(picture, x, y) < 160 ? 1 : 0;
    }
    return dark;
  }

  /** Luma of ITU-R BT.601, what a grey printer makes of a colour. */
  private static double grey(BufferedImage picture, int x, int y) {
    Color c = new Color(picture.getRGB(x, y));
    return 0.299 * c.getRed() + 0.587 * c.getGreen() + 0.114 * c.getBlue();
  }

  @Test
  void inGreyTheDotsStandOutFromThePaperAndFromTheJudgedGround() throws Exception {
    BufferedImage picture = png(List.of(read(10.8, -1, "Boost V")));
    double darkest = 255;
    for (int x = 400; x < 900; x++) {
      for (int y = 200; y < 330; y++) {
        Color c = new Color(picture.getRGB(x, y));
        boolean copper = c.getRed() > c.getBlue() + 60;
        darkest = copper ? Math.min(darkest, grey(picture, x, y)) : darkest;
      }
    }
    assertTrue(darkest < 100, "a copper dot is grey " + darkest + " of 255");
  }

  @Test
  void twoLogsStandOneAboveTheOther() throws Exception {
    LogReading before = read(10.8, -1, "Boost V");
    LogReading after = read(10.8, 0, "Boost V");
    assertEquals(
        2 * new LogPicture(List.of(before), Locale.ENGLISH).height(),
        new LogPicture(List.of(before, after), Locale.ENGLISH).height());
    String said =
        svg(List.of(before, after)).getElementsByTagName("title").item(0).getTextContent();
    assertEquals("This log supports a fault of the module. This log speaks for the module.", said);
  }

  @Test
  void withoutACrankTheWholeLogIsShown() throws Exception {
    LogReading log = LogAnalysis.of(LogText.of("log.csv", text(12.4, 0, "Boost V", 0)), request());
    assertTrue(log.cranks().isEmpty());
    assertEquals(count(0, 15), outputDots(svg(List.of(log)), "white"));
  }

  @Test
  void theSameLogGivesTheSameFileAndNamesAreInert() throws Exception {
    LogReading log = read(10.8, -1, "Boost V <script>alert(1)</script>");
    Path one = folder.resolve("one.svg");
    Path two = folder.resolve("two.SVG");
    LogCharts.write(List.of(log), one);
    LogCharts.write(List.of(log), two);
    assertEquals(Files.readString(one), Files.readString(two));
    assertFalse(Files.readString(one).contains("<script"));
  }

  @Test
  void otherEndingsAndFoldersThatAreNotThereAreRefused() {
    List<LogReading> logs = List.of(read(10.8, -1, "Boost V"));
    assertThrows(
        IllegalArgumentException.class, () -> LogCharts.write(logs, folder.resolve("plot.gif")));
    for (String name : List.of("none/plot.svg", "none/plot.png")) {
      assertThrows(UncheckedIOException.class, () -> LogCharts.write(logs, folder.resolve(name)));
    }
  }

  private static LogReading read(double supply_V, double slope_V_s, String output) {
    return LogAnalysis.of(LogText.of("log.csv", text(supply_V, slope_V_s, output, 180)), request());
  }

  private static LogRequest request() {
    return new LogRequest(Optional.of(FAMILY), List.of(FAMILY), Choices.none(), Optional.empty());
  }

  private static String text(double supply_V, double slope_V_s, String output, int speed) {
    StringBuilder log = new StringBuilder("Time (s),RPM,Battery Voltage (V)," + output + "\n");
    for (int i = 0; i <= 15 / STEP_S; i++) {
      double t = i * STEP_S;
      boolean cranks = t >= 5 && t < 10;
      log.append(
          String.format(
              Locale.ROOT,
              "%.2f,%d,%.2f,%.2f%n",
              t,
              cranks ? speed : 0,
              cranks ? supply_V + 0.05 * (i % 2) : 12.5,
              cranks ? 47.4 + slope_V_s * (t - 5) + 0.1 * (i % 2) : 47.9));
    }
    return log.toString();
  }

  private static long count(double from_s, double to_s) {
    long n = 0;
    for (int i = 0; i <= 15 / STEP_S; i++) {
      n += i * STEP_S >= from_s && i * STEP_S <= to_s ? 1 : 0;
    }
    return n;
  }

  /** Circles of the size and colour that only the output's samples have. */
  private static long outputDots(Document svg, String fill) {
    NodeList circles = svg.getElementsByTagName("circle");
    long n = 0;
    for (int i = 0; i < circles.getLength(); i++) {
      Element c = (Element) circles.item(i);
      n += c.getAttribute("r").equals("2.8") && c.getAttribute("fill").equals(fill) ? 1 : 0;
    }
    return n;
  }

  private Document svg(List<LogReading> logs) throws Exception {
    Path file = folder.resolve("plot.svg");
    LogCharts.write(logs, file);
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
  }

  private BufferedImage png(List<LogReading> logs) throws Exception {
    Path file = folder.resolve("plot.png");
    LogCharts.write(logs, file);
    return ImageIO.read(file.toFile());
  }
}
