package corewright.station.work;

import corewright.bench.run.Clock;
import java.time.Instant;
import java.time.ZoneId;

/** The injected clock's time of day, for rooms that need no more than that. */
final class WallClock extends java.time.Clock {
  private final Clock clock;
  private final ZoneId zone;

  WallClock(Clock clock, ZoneId zone) {
    this.clock = clock;
    this.zone = zone;
  }

  @Override
  public ZoneId getZone() {
    return zone;
  }

  @Override
  public java.time.Clock withZone(ZoneId other) {
    return new WallClock(clock, other);
  }

  @Override
  public Instant instant() {
    return clock.wall();
  }
}
