package corewright.bench.zoo;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;

/** Time that passes when somebody waits, and at no other moment. */
final class PassingClock implements Clock {
  private long nanos;

  @Override
  public long nanos() {
    return nanos;
  }

  @Override
  public Instant wall() {
    return Instant.EPOCH.plusNanos(nanos);
  }

  @Override
  public void pause(Duration time) {
    nanos += time.toNanos();
  }
}
