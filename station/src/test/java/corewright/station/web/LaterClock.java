package corewright.station.web;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;

/** The computer's own time, and later where a test says that so much has passed. */
public final class LaterClock implements Clock {
  private final Clock own = Clock.system();
  private volatile Duration later = Duration.ZERO;

  public void passes(Duration time) {
    later = later.plus(time);
  }

  @Override
  public long nanos() {
    return own.nanos();
  }

  @Override
  public Instant wall() {
    return own.wall().plus(later);
  }

  @Override
  public void pause(Duration time) {
    own.pause(time);
  }
}
