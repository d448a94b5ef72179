package corewright.station.web.live;

import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Optional;

/**
 * The mean of the output within the judged window of a hold, as far as it has come. Its uncertainty
 * comes from the channel's calibration and from the scatter of the means of frames: within a frame
 * neighbouring samples are alike, between frames a drift shows as scatter, so it is never too small
 * for either. The reading of the record is made anew from all samples when the run is over.
 *
 * @see "JCGM 100:2008, 4.2.3 (type A, of n means of batches) and 4.3 (type B)"
 */
final class HoldMean {
  /** Fewer means say nothing about their scatter. */
  private static final int FEWEST = 5;

  private long sum;
  private long samples;
  private int batches;
  private double mean;
  private double squares;

  void begin() {
    sum = 0;
    samples = 0;
    batches = 0;
    mean = 0;
    squares = 0;
  }

  /** Adds the samples of one frame, those of the window. */
  void add(short[] codes, int from, int to) {
    if (to <= from) {
      return;
    }
    long own = 0;
    for (int i = from; i < to; i++) {
      own += codes[i];
    }
    sum += own;
    samples += to - from;
    batches++;
    double batch = (double) own / (to - from);
    double off = batch - mean;
    mean += off / batches;
    squares += off * (batch - mean);
  }

  /** The mean so far; empty while there are too few frames to say how it scatters. */
  Optional<Measurement> soFar(double lsb, double offset, ChannelDoubt doubt) {
    if (batches < FEWEST) {
      return Optional.empty();
    }
    double value = offset + lsb * sum / samples;
    double scatter = Math.abs(lsb) * Math.sqrt(squares / (batches - 1) / batches);
    double u = Math.hypot(Math.hypot(doubt.gain_rel() * value, doubt.offset()), scatter);
    return Optional.of(new Measurement(value, u, Unit.VOLT));
  }
}
