package corewright.bench.run;

/** The mean of a channel over one frame: enough to steer by, never a reading. */
final class Means {

  private Means() {}

  /** In the channel's unit; infinite where a sample is beyond the range. */
  static double of(FrameView view, String channel) {
    int c = view.channel(channel);
    double sum = 0;
    for (int i = 0; i < view.samples(); i++) {
      sum += view.value(c, i);
    }
    return sum / view.samples();
  }
}
