package corewright.bench.wirelog;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;

/** The clock of a wire log. Nobody waits on it. */
final class PlayedClock implements Clock {
  private final PlayedLog log;
  private final Clock wall;

  PlayedClock(PlayedLog log, Clock wall) {
    this.log = log;
    this.wall = wall;
  }

  @Override
  public long nanos() {
    return log.nanos(LoggedClock.whose());
  }

  @Override
  public Instant wall() {
    return wall.wall();
  }

  @Override
  public void pause(Duration time) {
    // what was waited for stands in the log
  }
}
