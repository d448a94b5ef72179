package corewright.station.demo;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * The day as an emulated bench has it: it passes with the samples that are taken and the hands that
 * change units. Deadlines are held against the computer's own time, as everywhere.
 */
final class DayClock implements Clock {
  private static final Instant MORNING = Instant.parse("2026-11-30T06:00:00Z");

  private final Clock host = Clock.system();
  private volatile Duration passed = Duration.ZERO;

  /** Moves on; called by one thread. */
  void pass(Duration time) {
    passed = passed.plus(time);
  }

  /** Since the day began. */
  Duration passed() {
    return passed;
  }

  @Override
  public Instant wall() {
    return MORNING.plus(passed);
  }

  @Override
  public long nanos() {
    return host.nanos();
  }

  @Override
  public void pause(Duration time) {
    host.pause(time);
  }
}
