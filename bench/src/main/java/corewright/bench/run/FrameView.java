package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import java.util.List;
import java.util.Optional;

/**
 * A frame as the trips look at it: values in units, beside what the bench was told.
 *
 * @param previousEnd index after the last sample before this frame
 * @param rate_Hz samples a second
 * @param before_s when the digitizer began to count at this rate, s since the run began
 * @param load_A load current that was asked for
 * @param relayClosed the feed relay was told to close
 */
record FrameView(
    Digitizer.Frame frame,
    List<Channel> channels,
    long previousEnd,
    int rate_Hz,
    double before_s,
    double load_A,
    boolean relayClosed) {

  int samples() {
    return frame.samples();
  }

  /** Index of a channel, −1 if it is not sampled. */
  int channel(String name) {
    for (int c = 0; c < channels.size(); c++) {
      if (channels.get(c).name().equals(name)) {
        return c;
      }
    }
    return -1;
  }

  /** Value in the channel's unit; a code at either rail is beyond what can be told: infinite. */
  double value(int channel, int sample) {
    short code = frame.codes()[channel][sample];
    if (code == Short.MAX_VALUE) {
      return Double.POSITIVE_INFINITY;
    }
    if (code == Short.MIN_VALUE) {
      return Double.NEGATIVE_INFINITY;
    }
    return channels.get(channel).offset() + channels.get(channel).lsb() * code;
  }

  /**
   * Between what two values all of a channel's samples lie, in its unit; whichever is greater.
   * Empty where there is none, or one at a rail: there a value says nothing about others.
   */
  Optional<Extremes> extremes(int channel) {
    int least = Short.MAX_VALUE;
    int greatest = Short.MIN_VALUE;
    for (short code : frame.codes()[channel]) {
      least = Math.min(least, code);
      greatest = Math.max(greatest, code);
    }
    if (least > greatest || least == Short.MIN_VALUE || greatest == Short.MAX_VALUE) {
      return Optional.empty();
    }
    Channel scale = channels.get(channel);
    return Optional.of(
        new Extremes(
            scale.offset() + scale.lsb() * least, scale.offset() + scale.lsb() * greatest));
  }

  /** The values of the least and of the greatest code. */
  record Extremes(double oneEnd, double otherEnd) {}

  /** Time of a sample since the run began, s. */
  double at_s(int sample) {
    return before_s + (double) (frame.first() + sample) / rate_Hz;
  }
}
