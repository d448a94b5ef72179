package corewright.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** The curves of a scene on their axes: output, input and load over one time axis. */
final class LaneChart {
  static final double LEFT = 46;
  static final double RIGHT = 150;
  private static final double TOP = 34;
  private static final double GAP = 20;
  private static final double LOAD = 24;
  private static final double AXIS = 26;
  private static final double INPUT_SHARE = 0.33;

  private final Scene scene;
  private final Words words;
  private final CombinedDomainXYPlot all;
  private final List<XYPlot> lanes = new ArrayList<>();

  LaneChart(Scene scene, Words words, double width, double height) {
    this.scene = scene;
    this.words = words;
    RuleAxis time =
        new RuleAxis(
            scene.time_s(),
            Scales.timeMarks(scene.time_s(), width - LEFT - RIGHT, words.numerals()));
    all = new CombinedDomainXYPlot(time);
    boolean input = !scene.inputs().isEmpty();
    boolean load = scene.load().isPresent();
    double gaps = GAP * ((input ? 1 : 0) + (load ? 1 : 0));
    double rest = height - TOP - AXIS - gaps - (load ? LOAD : 0);
    double inputHeight = input ? rest * INPUT_SHARE : 0;
    add(outputLane(rest - inputHeight), rest - inputHeight);
    if (input) {
      add(inputLane(), inputHeight);
    }
    scene.load().ifPresent(trace -> add(loadLane(trace), LOAD));
    all.setGap(GAP);
    all.setInsets(new RectangleInsets(TOP, 0, 0, RIGHT));
    all.setOutlineVisible(false);
    AxisSpace left = new AxisSpace();
    left.setLeft(LEFT);
    all.setFixedRangeAxisSpace(left);
    AxisSpace bottom = new AxisSpace();
    bottom.setBottom(AXIS);
    all.setFixedDomainAxisSpace(bottom);
  }

  /** Draws everything and says where the lanes came to lie: output, input and load, as present. */
  List<Lane> draw(Graphics2D g, double width, double height) {
    JFreeChart chart = new JFreeChart(null, null, all, false);
    chart.setBackgroundPaint(null);
    ChartRenderingInfo info = new ChartRenderingInfo();
    chart.draw(g, new Rectangle2D.Double(0, 0, width, height), info);
    List<Lane> drawn = new ArrayList<>();
    for (int i = 0; i < lanes.size(); i++) {
      Rectangle2D area = info.getPlotInfo().getSubplotInfo(i).getDataArea();
      drawn.add(new Lane(area, all.getDomainAxis(), lanes.get(i).getRangeAxis()));
    }
    return drawn;
  }

  private XYPlot outputLane(double height) {
    Span span = Scales.output(scene);
    XYPlot lane = lane(new RuleAxis(span, Scales.outputMarks(span, height, words.numerals())));
    lane.setRangeGridlinesVisible(true);
    scene.judged().forEach(window -> below(lane, Backdrop.ground(window)));
    if (scene.emulated()) {
      below(lane, Backdrop.emulated(words));
    }
    scene.others().forEach(t -> below(lane, Backdrop.teeth(t, Ink.EARLIER_COMB)));
    below(lane, Backdrop.teeth(scene.output(), Ink.COMB));
    for (int i = 0; i < scene.others().size(); i++) {
      curve(lane, scene.others().get(i), Ink.INK, i == 0 ? Ink.EARLIER : Ink.LATER);
    }
    curve(lane, scene.output(), Ink.COPPER, Ink.OUTPUT);
    return lane;
  }

  private XYPlot inputLane() {
    Span span = Scales.input(scene);
    XYPlot lane = lane(new RuleAxis(span, inputMarks(span)));
    scene.zones().ifPresent(zones -> below(lane, Backdrop.zones(zones, span)));
    for (Trace trace : scene.inputs()) {
      below(lane, Backdrop.teeth(trace, Ink.INK));
      curve(lane, trace, Ink.INK, Ink.INPUT);
    }
    return lane;
  }

  private static XYPlot loadLane(Trace load) {
    XYPlot lane = lane(new RuleAxis(Scales.load(load), List.of()));
    curve(lane, load, Ink.INK, Ink.INPUT);
    return lane;
  }

  private List<RuleAxis.Mark> inputMarks(Span span) {
    if (scene.zones().isEmpty()) {
      return RuleAxis.marks(
          span, 1, Math.max(1, Math.ceil(span.length() / 4)), "V", words.numerals());
    }
    double top = Math.floor(span.to()); // the edges of the zones have their figures from Picture
    return List.of(new RuleAxis.Mark(top, words.numerals().plain(top) + "\u00A0V"));
  }

  private void add(XYPlot lane, double height) {
    lanes.add(lane);
    all.add(lane, (int) Math.round(height));
  }

  private static XYPlot lane(RuleAxis axis) {
    XYPlot lane = new XYPlot();
    axis.setAxisLineVisible(false);
    axis.setTickMarksVisible(false);
    lane.setRangeAxis(axis);
    lane.setBackgroundPaint(null);
    lane.setOutlineVisible(false);
    lane.setDomainGridlinesVisible(false);
    lane.setRangeGridlinesVisible(false);
    lane.setRangeGridlinePaint(Ink.HAIR);
    lane.setRangeGridlineStroke(Ink.HAIRLINE);
    lane.setRenderer(0, line(Ink.INK, Ink.INPUT)); // carries the annotations below the curves
    return lane;
  }

  private static void below(XYPlot lane, XYAnnotation annotation) {
    lane.getRenderer(0).addAnnotation(annotation, Layer.BACKGROUND);
  }

  private static void curve(XYPlot lane, Trace trace, Color colour, Stroke stroke) {
    double[][] points = new double[2][trace.columns()];
    for (int i = 0; i < trace.columns(); i++) {
      points[0][i] = trace.time_s(i);
      points[1][i] = trace.mean(i);
    }
    DefaultXYDataset data = new DefaultXYDataset();
    data.addSeries("", points);
    int index = lane.getDatasetCount() + 1;
    lane.setDataset(index, data);
    lane.setRenderer(index, line(colour, stroke));
  }

  private static XYLineAndShapeRenderer line(Color colour, Stroke stroke) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setSeriesPaint(0, colour);
    renderer.setSeriesStroke(0, stroke);
    return renderer;
  }
}
