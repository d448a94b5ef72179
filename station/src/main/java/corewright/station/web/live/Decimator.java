package corewright.station.web.live;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.station.web.live.Columns.Lane;
import java.util.Arrays;
import java.util.List;

/**
 * Turns frames into columns as they come, on the engine's thread: one pass over the samples, no
 * floating point within it.
 */
final class Decimator {
  private static final double THOUSANDTHS = 1000;
  private static final long MS_PER_S = 1000;

  private final Columns columns;
  private int[] channelOf = {};
  private List<Channel> channels = List.of();
  private long rate_Hz = 1;
  private int base;

  private final int[] low = new int[Lane.values().length];
  private final int[] high = new int[Lane.values().length];
  private int open = -1;
  private int[] done = new int[64 * Columns.WIDTH];

  Decimator(Columns columns) {
    this.columns = columns;
  }

  /**
   * Sampling begins, or begins anew at another rate: samples count from 0, time goes on.
   *
   * @param feed which channel is the input lane
   */
  void begin(List<Channel> now, int rate, String feed) {
    close();
    channels = now;
    rate_Hz = rate;
    base = columns.size();
    List<String> names = now.stream().map(Channel::name).toList();
    channelOf =
        new int[] {
          names.indexOf("output"),
          names.indexOf(feed),
          names.indexOf("load"),
          names.indexOf("inputCurrent")
        };
  }

  /** Takes a frame in; its last column stays open until the next frame has filled it. */
  void add(Digitizer.Frame frame) {
    int at = 0;
    int first = -1;
    int count = 0;
    while (at < frame.samples()) {
      int column = column(frame.first() + at);
      int to = (int) Math.min(frame.samples(), firstSample(column + 1) - frame.first());
      if (column != open) {
        if (open >= 0) {
          count = keep(count);
          first = first < 0 ? open : first;
          if (column != open + 1) {
            columns.add(base + first, done, count);
            first = -1;
            count = 0;
          }
        }
        start(column);
      }
      for (int lane = 0; lane < channelOf.length; lane++) {
        if (channelOf[lane] >= 0) {
          take(lane, frame.codes()[channelOf[lane]], at, to);
        }
      }
      at = to;
    }
    if (count > 0) {
      columns.add(base + first, done, count);
    }
  }

  /** Keeps the open column: nothing more comes. */
  void close() {
    if (open >= 0) {
      keep(0);
      columns.add(base + open, done, 1);
      open = -1;
    }
  }

  private int column(long sample) {
    return (int) (sample * MS_PER_S / (rate_Hz * columns.column_ms()));
  }

  /** The first sample that lies in a column. */
  private long firstSample(int column) {
    long samples = column * rate_Hz * columns.column_ms();
    return (samples + MS_PER_S - 1) / MS_PER_S;
  }

  private void start(int column) {
    open = column;
    Arrays.fill(low, Integer.MAX_VALUE);
    Arrays.fill(high, Integer.MIN_VALUE);
  }

  private void take(int lane, short[] codes, int from, int to) {
    int lowest = low[lane];
    int highest = high[lane];
    for (int i = from; i < to; i++) {
      int code = codes[i];
      lowest = Math.min(lowest, code);
      highest = Math.max(highest, code);
    }
    low[lane] = lowest;
    high[lane] = highest;
  }

  private int keep(int count) {
    if ((count + 1) * Columns.WIDTH > done.length) {
      done = Arrays.copyOf(done, done.length * 2);
    }
    for (int lane = 0; lane < channelOf.length; lane++) {
      int at = count * Columns.WIDTH + 2 * lane;
      boolean there = channelOf[lane] >= 0 && low[lane] != Integer.MAX_VALUE;
      int a = there ? thousandths(channelOf[lane], low[lane]) : Columns.NOTHING;
      int b = there ? thousandths(channelOf[lane], high[lane]) : Columns.NOTHING;
      done[at] = Math.min(a, b);
      done[at + 1] = Math.max(a, b);
    }
    return count + 1;
  }

  private int thousandths(int channel, int code) {
    Channel c = channels.get(channel);
    return (int) Math.round((c.offset() + c.lsb() * code) * THOUSANDTHS);
  }
}
