package corewright.bench.wirelog;

import corewright.bench.run.Clock;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;

/** A clock whose every reading is written down. */
final class LoggedClock implements Clock {
  private final WireLog log;
  private final Clock clock;

  LoggedClock(WireLog log, Clock clock) {
    this.log = log;
    this.clock = clock;
  }

  @Override
  public long nanos() {
    long now = clock.nanos();
    byte[] text = Long.toString(now).getBytes(StandardCharsets.US_ASCII);
    log.put(whose(), WireEvent.Kind.CLOCK, text);
    return now;
  }

  /** Each thread has its own order of readings. */
  static String whose() {
    String name = Thread.currentThread().getName();
    return name.startsWith("aside-") ? name : "engine";
  }

  @Override
  public Instant wall() {
    return clock.wall();
  }

  @Override
  public void pause(Duration time) {
    clock.pause(time);
  }
}
