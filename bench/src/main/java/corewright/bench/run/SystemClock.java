package corewright.bench.run;

import java.time.Duration;
import java.time.Instant;

/** The computer's own time. */
final class SystemClock implements Clock {

  @Override
  public long nanos() {
    return System.nanoTime();
  }

  @Override
  public Instant wall() {
    return Instant.now();
  }

  @Override
  public void pause(Duration time) {
    try {
      Thread.sleep(time.toMillis(), time.toNanosPart() % 1_000_000);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
