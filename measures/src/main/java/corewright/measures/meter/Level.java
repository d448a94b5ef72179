package corewright.measures.meter;

import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.WindowStatistics;

/**
 * What one channel does in one window.
 *
 * @param rounding standard uncertainty that resolution leaves in the mean
 * @param sampling standard uncertainty of the mean from where the window's ends lie between samples
 */
record Level(
    WindowStatistics statistics,
    LinearTrend trend,
    CorrelatedScatter scatter,
    double rounding,
    double sampling) {

  static Level of(Channel channel, int from, int to) {
    WindowStatistics statistics = WindowStatistics.of(channel.wave(), from, to);
    LinearTrend trend = LinearTrend.of(channel.wave(), from, to);
    CorrelatedScatter scatter = CorrelatedScatter.of(channel.wave(), from, to, trend);
    int n = to - from;
    double rounding = channel.resolution().ofMean(scatter.sd(), trend.slope() * n, n);
    // Samples in [start, end) lie half a sample early on the whole, which a trend turns into level.
    double early = Math.abs(trend.slope()) / 2 / Math.sqrt(3);
    return new Level(statistics, trend, scatter, rounding, early);
  }

  /**
   * Standard uncertainty of the mean from scatter, resolution and sampling alone: the part that is
   * independent from hold to hold.
   */
  double uMean() {
    return Root.of(scatter.ofMean(), rounding, sampling);
  }

  double mean() {
    return statistics.mean();
  }
}
