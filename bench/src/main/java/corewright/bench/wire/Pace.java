package corewright.bench.wire;

import corewright.bench.run.Clock;
import java.time.Duration;

/**
 * When the next sample is due of an instrument that measures when it is asked. What comes too late
 * is missing: no sample is given a time at which it was not taken.
 */
final class Pace {
  private static final double NANOS_PER_S = 1e9;

  private final Clock clock;
  private final boolean standsStill;
  private int rate_Hz = 1;
  private long began;
  private long next;

  /**
   * @param standsStill the instrument's time stands still until it is asked: nothing is waited for
   */
  Pace(Clock clock, boolean standsStill) {
    this.clock = clock;
    this.standsStill = standsStill;
  }

  void start(int rate) {
    rate_Hz = rate;
    began = clock.nanos();
    next = 0;
  }

  /** Waits until a sample is due; its index. */
  long due() {
    if (standsStill) {
      return next++;
    }
    long now = clock.nanos() - began;
    long at = Math.max(next, (long) Math.floor(now * (double) rate_Hz / NANOS_PER_S));
    long due = (long) (at * NANOS_PER_S / rate_Hz);
    if (due > now) {
      clock.pause(Duration.ofNanos(due - now));
    }
    next = at + 1;
    return at;
  }
}
