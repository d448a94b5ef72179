package corewright.station.work;

import corewright.bench.record.ShopDay;
import corewright.bench.run.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** The injected clock's time of day, for rooms that need no more than that. */
final class WallClock extends java.time.Clock {
  private final Clock clock;
  private final ZoneId zone;

  /** In this computer's own time zone. */
  static WallClock here(Clock clock) {
    return new WallClock(clock, ZoneId.systemDefault());
  }

  WallClock(Clock clock, ZoneId zone) {
    this.clock = clock;
    this.zone = zone;
  }

  /**
   * The day that it was somewhere.
   *
   * @param at as the ledger keeps times, UTC
   */
  static LocalDate day(String at, ZoneId zone) {
    return ShopDay.of(Instant.parse(at), zone);
  }

  /** The day that it is here. */
  LocalDate today() {
    return LocalDate.ofInstant(clock.wall(), zone);
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
