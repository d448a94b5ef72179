package corewright.station.web.live;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;

/** Follows the hold that is being judged, frame by frame. Lives on the engine's thread. */
final class HoldWatch {
  private final Course course;
  private final HoldMean mean = new HoldMean();
  private final LowestInput lowest = new LowestInput();

  private List<Channel> channels = List.of();
  private int output = -1;
  private int input = -1;
  private int rate_Hz = 1;
  private long end;
  private long from = Long.MAX_VALUE;
  private long to = Long.MAX_VALUE;
  private boolean held;

  HoldWatch(Course course) {
    this.course = course;
  }

  void sampling(List<Channel> now, int rate) {
    channels = now;
    rate_Hz = rate;
    output = index("output");
    input = index(course.feed());
    end = 0;
    held = false;
    from = Long.MAX_VALUE;
  }

  /** A step begins with the next sample. */
  void step(Step step) {
    mean.begin();
    lowest.begin(rate_Hz);
    held = Course.isJudged(step);
    from = held ? end + Math.round(course.settle_s() * rate_Hz) : Long.MAX_VALUE;
    to = end + Math.round((step.hold_s() - course.guard_s()) * rate_Hz);
  }

  void frame(Digitizer.Frame frame) {
    end = frame.first() + frame.samples();
    if (held && output >= 0) {
      int first = (int) Math.max(0, Math.min(frame.samples(), from - frame.first()));
      int last = (int) Math.max(first, Math.min(frame.samples(), to - frame.first()));
      mean.add(frame.codes()[output], first, last);
    }
    if (held && input >= 0) {
      lowest.add(frame.codes()[input]);
    }
  }

  /** Mean of the window so far. */
  Optional<Measurement> mean() {
    return held && output >= 0
        ? course
            .doubt("output")
            .flatMap(d -> mean.soFar(channels.get(output).lsb(), channels.get(output).offset(), d))
        : Optional.empty();
  }

  /** Lowest input of the hold so far. */
  Optional<Measurement> lowest() {
    if (!held || input < 0 || lowest.code().isEmpty()) {
      return Optional.empty();
    }
    Channel c = channels.get(input);
    double value = c.offset() + c.lsb() * lowest.code().getAsInt();
    return course.doubt(course.feed()).map(d -> new Measurement(value, u(value, d, c), Unit.VOLT));
  }

  /** Calibration, and the resolution of one code (JCGM 100, F.2.2.1). */
  private static double u(double value, ChannelDoubt doubt, Channel channel) {
    double known = Math.hypot(doubt.gain_rel() * value, doubt.offset());
    return Math.hypot(known, channel.lsb() / Math.sqrt(12));
  }

  private int index(String name) {
    return channels.stream().map(Channel::name).toList().indexOf(name);
  }
}
