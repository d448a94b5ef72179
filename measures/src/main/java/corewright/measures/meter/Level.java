package corewright.measures.meter;

import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.WindowStatistics;

/**
 * What one channel does in one window.
 *
 * @param uMean standard uncertainty of the mean from scatter, resolution and sampling alone: the
 *     part that is independent from hold to hold
 */
record Level(
    WindowStatistics statistics, LinearTrend trend, CorrelatedScatter scatter, double uMean) {

  static Level of(Channel channel, int from, int to) {
    WindowStatistics statistics = WindowStatistics.of(channel.wave(), from, to);
    LinearTrend trend = LinearTrend.of(channel.wave(), from, to);
    CorrelatedScatter scatter = CorrelatedScatter.of(channel.wave(), from, to, trend);
    int n = to - from;
    double rounding = channel.resolution().ofMean(scatter.sd(), trend.slope() * n, n);
    // Samples in [start, end) lie half a sample early on the whole, which a trend turns into level.
    double early = trend.slope() / 2 / Math.sqrt(3);
    return new Level(statistics, trend, scatter, Root.of(scatter.ofMean(), rounding, early));
  }

  double mean() {
    return statistics.mean();
  }
}
