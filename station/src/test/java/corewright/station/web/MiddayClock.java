package corewright.station.web;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** The computer's own time, shifted so that it is midday here: no day ends in a test's middle. */
final class MiddayClock implements Clock {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private final Clock own = Clock.system();
  private final long begun = own.nanos();

  @Override
  public long nanos() {
    return own.nanos();
  }

  @Override
  public Instant wall() {
    return DAY.atTime(LocalTime.NOON)
        .atZone(ZoneId.systemDefault())
        .toInstant()
        .plusNanos(nanos() - begun);
  }

  @Override
  public void pause(Duration time) {
    own.pause(time);
  }
}
