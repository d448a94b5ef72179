package corewright.reports.chart;

/** A stretch of the time axis or of a value axis. */
record Span(double from, double to) {
  double length() {
    return to - from;
  }
}
