package corewright.measures.meter;

import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.WindowStatistics;

/**
 * What one channel does in one window.
 *
 * @param uMean standard uncertainty of the mean from scatter and resolution alone: the part that is
 *     independent from hold to hold
 */
record Level(
    WindowStatistics statistics, LinearTrend trend, CorrelatedScatter scatter, double uMean) {

  static Level of(Channel channel, int from, int to) {
    WindowStatistics statistics = WindowStatistics.of(channel.wave(), from, to);
    LinearTrend trend = LinearTrend.of(channel.wave(), from, to);
    CorrelatedScatter scatter = CorrelatedScatter.of(channel.wave(), from, to, trend);
    int n = to - from;
    double rounding = channel.resolution().ofMean(scatter.sd(), trend.slope() * n, n);
    return new Level(statistics, trend, scatter, Root.of(scatter.ofMean(), rounding));
  }

  double mean() {
    return statistics.mean();
  }
}
