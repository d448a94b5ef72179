package corewright.reports.chart;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Pictures of an owner's figures: a dot with its interval for each, or a curve over time. */
public final class FigurePictures {
  private static final int WIDTH = 672;
  private static final int FRAME = 110;
  private static final int ROW = 26;
  private static final int CURVE_HEIGHT = 380;
  private static final int FINE = 2;

  private final JFreeChart chart;
  private final int height;

  private FigurePictures(JFreeChart chart, int height) {
    this.chart = chart;
    this.height = height;
  }

  /**
   * One figure.
   *
   * @param label what it is of, with n
   * @param low lower end of its interval, {@code value} itself where it has none; as high
   */
  public record Dot(String label, double value, double low, double high) {}

  /** A point of a curve, with its interval. */
  public record Point(double x, double y, double low, double high) {}

  /**
   * Figures below each other.
   *
   * @param axis what is counted and in what, as {@code share, %}
   * @param most end of the axis; 0: as far as the figures go
   */
  public static FigurePictures dots(String title, String axis, double most, List<Dot> dots) {
    YIntervalSeries series = new YIntervalSeries("");
    for (int i = 0; i < dots.size(); i++) {
      Dot dot = dots.get(i);
      series.add(i, dot.value(), dot.low(), dot.high());
    }
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(series);
    SymbolAxis names = new SymbolAxis("", dots.stream().map(Dot::label).toArray(String[]::new));
    names.setInverted(true);
    names.setGridBandsVisible(false);
    names.setRange(-0.5, Math.max(0.5, dots.size() - 0.5));
    NumberAxis values = axis(axis);
    if (most > 0) {
      values.setRange(0, most);
    } else {
      values.setAutoRangeIncludesZero(true);
    }
    XYErrorRenderer renderer = new XYErrorRenderer();
    renderer.setDrawXError(false);
    renderer.setSeriesPaint(0, Ink.COPPER);
    renderer.setSeriesShape(0, new Ellipse2D.Double(-4, -4, 8, 8));
    renderer.setErrorPaint(Ink.INK2);
    renderer.setErrorStroke(Ink.MARK);
    XYPlot plot = new XYPlot(data, names, values, renderer);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    return new FigurePictures(framed(title, plot, names), FRAME + ROW * Math.max(1, dots.size()));
  }

  /**
   * A share that falls in steps, its interval, and a smooth line beside it.
   *
   * @param line may be empty
   */
  public static FigurePictures fall(
      String title, String time, String share, List<Point> steps, List<Point> line) {
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(series("observed", steps, 0));
    data.addSeries(series("low", steps, -1));
    data.addSeries(series("high", steps, 1));
    NumberAxis x = axis(time);
    NumberAxis y = axis(share);
    XYStepRenderer stepped = new XYStepRenderer();
    stepped.setSeriesPaint(0, Ink.COPPER);
    stepped.setSeriesStroke(0, Ink.OUTPUT);
    for (int edge = 1; edge <= 2; edge++) {
      stepped.setSeriesPaint(edge, Ink.RULE);
      stepped.setSeriesStroke(edge, Ink.HAIRLINE);
    }
    XYPlot plot = new XYPlot(data, x, y, stepped);
    XYLineAndShapeRenderer smooth = new XYLineAndShapeRenderer(true, false);
    smooth.setDrawSeriesLineAsPath(true);
    smooth.setSeriesPaint(0, Ink.INK);
    smooth.setSeriesStroke(0, Ink.EARLIER);
    plot.setDataset(1, new XYSeriesCollection(series("line", line, 0)));
    plot.setRenderer(1, smooth);
    x.setAutoRangeIncludesZero(true);
    return new FigurePictures(framed(title, plot, x), CURVE_HEIGHT);
  }

  /**
   * A reading followed from run to run, with its centre and limits.
   *
   * @param lines level lines across the chart; empty before there are limits
   * @param marked which points stand out, counted from 0
   */
  public static FigurePictures control(
      String title, String axis, List<Double> values, List<Double> lines, Set<Integer> marked) {
    XYSeries points = new XYSeries("reading");
    XYSeries out = new XYSeries("stands out");
    for (int i = 0; i < values.size(); i++) {
      points.add(i + 1, values.get(i));
      if (marked.contains(i)) {
        out.add(i + 1, values.get(i));
      }
    }
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(out); // drawn last, over the others
    data.addSeries(points);
    NumberAxis runs = axis("run");
    runs.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    runs.setRange(0.5, Math.max(1.5, values.size() + 0.5));
    NumberAxis readings = axis(axis);
    readings.setNumberFormatOverride(
        new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    readings.setAutoRangeIncludesZero(false);
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
    renderer.setSeriesLinesVisible(0, false);
    renderer.setSeriesPaint(0, Ink.INK);
    renderer.setSeriesShape(0, new Rectangle2D.Double(-6, -6, 12, 12));
    renderer.setSeriesShapesFilled(0, false);
    renderer.setSeriesPaint(1, Ink.COPPER);
    renderer.setSeriesStroke(1, Ink.HAIRLINE);
    renderer.setSeriesShape(1, new Ellipse2D.Double(-3, -3, 6, 6));
    XYPlot plot = new XYPlot(data, runs, readings, renderer);
    for (double line : lines) {
      plot.addRangeMarker(new ValueMarker(line, Ink.INK2, Ink.EARLIER));
    }
    include(readings, values, lines);
    return new FigurePictures(framed(title, plot, runs), CURVE_HEIGHT);
  }

  /** All points and all lines, with a little air; of one level only, a band about it. */
  private static void include(NumberAxis axis, List<Double> values, List<Double> lines) {
    DoubleSummaryStatistics all =
        Stream.concat(values.stream(), lines.stream())
            .mapToDouble(Double::doubleValue)
            .summaryStatistics();
    if (all.getCount() > 0) {
      double span = all.getMax() - all.getMin();
      double air = span > 0 ? 0.08 * span : Math.max(1e-6, 0.001 * Math.abs(all.getMax()));
      axis.setRange(all.getMin() - air, all.getMax() + air);
    }
  }

  /**
   * Writes the picture.
   *
   * @param file whose name ends in .svg, .png or .pdf; what is there is written over
   * @throws IllegalArgumentException if it ends otherwise
   * @throws UncheckedIOException if it cannot be written
   */
  public void write(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    try {
      if (name.endsWith(".svg")) {
        Svg.write(this::draw, WIDTH, height, chart.getTitle().getText(), file);
      } else if (name.endsWith(".png")) {
        png(file);
      } else if (name.endsWith(".pdf")) {
        pdf(file);
      } else {
        throw new IllegalArgumentException(file + " ends neither in .svg, .png nor .pdf");
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the picture cannot be written to " + file, e);
    }
  }

  private void draw(Graphics2D g) {
    chart.draw(g, new Rectangle2D.Double(0, 0, WIDTH, height));
  }

  private void png(Path file) throws IOException {
    BufferedImage image =
        new BufferedImage(FINE * WIDTH, FINE * height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.scale(FINE, FINE);
    draw(g);
    g.dispose();
    try (OutputStream to = Files.newOutputStream(file)) {
      if (!ImageIO.write(image, "png", to)) {
        throw new IOException("no writer for it");
      }
    }
  }

  private void pdf(Path file) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(WIDTH, height));
      document.addPage(page);
      PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, WIDTH, height);
      draw(g);
      g.dispose();
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.drawForm(g.getXFormObject());
      }
      document.save(file.toFile());
    }
  }

  private static XYSeries series(String name, List<Point> points, int edge) {
    XYSeries series = new XYSeries(name);
    for (Point p : points) {
      series.add(p.x(), edge < 0 ? p.low() : edge > 0 ? p.high() : p.y());
    }
    return series;
  }

  private static NumberAxis axis(String name) {
    NumberAxis axis = new NumberAxis(name);
    axis.setNumberFormatOverride(
        new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    axis.setLabelFont(Type.regular(12));
    axis.setTickLabelFont(Type.regular(12));
    axis.setLabelPaint(Ink.INK2);
    axis.setTickLabelPaint(Ink.INK2);
    axis.setAxisLinePaint(Ink.RULE);
    return axis;
  }

  private static JFreeChart framed(String title, XYPlot plot, NumberAxis names) {
    names.setTickLabelFont(Type.regular(12));
    names.setTickLabelPaint(Ink.INK);
    plot.setBackgroundPaint(Ink.PAPER);
    plot.setOutlineVisible(false);
    plot.setRangeGridlinePaint(Ink.HAIR);
    plot.setRangeGridlineStroke(Ink.HAIRLINE);
    plot.setDomainGridlinesVisible(false);
    JFreeChart chart = new JFreeChart(title, Type.bold(15), plot, false);
    TextTitle heading = chart.getTitle();
    heading.setPaint(Ink.INK);
    heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
    heading.setTextAlignment(HorizontalAlignment.LEFT);
    chart.setBackgroundPaint(Ink.PAPER);
    chart.setPadding(new RectangleInsets(4, 8, 4, 16));
    return chart;
  }
}
