package corewright.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.axis.ValueTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis divided like a rule: a line at every division, a figure at some, the unit at one. */
final class RuleAxis extends NumberAxis {
  private static final long serialVersionUID = 1L;
  private final transient List<Mark> marks;

  /** One division; its words are empty where no figure stands. */
  record Mark(double value, String words) {}

  RuleAxis(Span span, List<Mark> marks) {
    super("");
    this.marks = List.copyOf(marks);
    setRange(span.from(), span.to());
    setTickLabelFont(Type.regular(13));
    setTickLabelPaint(Ink.INK2);
    setAxisLinePaint(Ink.RULE);
    setAxisLineStroke(Ink.TICK);
    setTickMarkPaint(Ink.RULE);
    setTickMarkStroke(Ink.TICK);
    setTickMarkInsideLength(0);
    setTickMarkOutsideLength(5);
  }

  @Override
  @SuppressWarnings("rawtypes") // as the library declares it
  public List refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    TextAnchor anchor =
        RectangleEdge.isLeftOrRight(edge) ? TextAnchor.CENTER_RIGHT : TextAnchor.TOP_CENTER;
    List<ValueTick> ticks = new ArrayList<>();
    for (Mark mark : marks) {
      ticks.add(
          new NumberTick(TickType.MAJOR, mark.value, mark.words, anchor, TextAnchor.CENTER, 0));
    }
    return ticks;
  }

  /**
   * Divisions of {@code span} at every multiple of {@code every}.
   *
   * @param figureAt a figure stands at every multiple of this
   * @param unit set beside the figure of the highest division that has one
   * @param numerals how figures are written
   */
  static List<Mark> marks(
      Span span, double every, double figureAt, String unit, Numerals numerals) {
    List<Mark> marks = new ArrayList<>();
    boolean named = false;
    long first = Math.round(Math.ceil(span.from() / every - 1e-9));
    long last = Math.round(Math.floor(span.to() / every + 1e-9));
    long step = Math.round(figureAt / every);
    for (long i = last; i >= first; i--) {
      boolean figure = i % step == 0;
      String words = figure ? numerals.plain(i * every) + (named ? "" : "\u00A0" + unit) : "";
      named |= figure;
      marks.add(new Mark(i * every, words));
    }
    return marks;
  }
}
