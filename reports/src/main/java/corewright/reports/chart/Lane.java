package corewright.reports.chart;

import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.ui.RectangleEdge;

/** One lane of the drawn picture: turns time and value into places on the page. */
record Lane(Rectangle2D area, ValueAxis time, ValueAxis value) {

  double x(double time_s) {
    return time.valueToJava2D(time_s, area, RectangleEdge.BOTTOM);
  }

  double y(double v) {
    return value.valueToJava2D(v, area, RectangleEdge.LEFT);
  }

  /** The stretch of the lane between two times. */
  Rectangle2D between(Span span) {
    return new Rectangle2D.Double(
        x(span.from()), area.getY(), x(span.to()) - x(span.from()), area.getHeight());
  }
}
