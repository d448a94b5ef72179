package corewright.bench.run;

import java.time.Duration;
import java.time.Instant;

/** Time that passes only when told to, or when somebody waits. */
public final class FakeClock implements Clock {
  private long nanos;

  public void pass(double seconds) {
    nanos += (long) (seconds * 1e9);
  }

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
