package corewright.bench.run;

import java.time.Duration;
import java.time.Instant;

/** Time, handed in. Nothing but its implementations reads a clock or sleeps. */
public interface Clock {

  /** Monotonic, ns from an arbitrary zero: what deadlines are held against. */
  long nanos();

  /** Time of day: what records are dated with. */
  Instant wall();

  /** Waits; returns early with the interrupt flag set if the thread is interrupted. */
  void pause(Duration time);

  /** The computer's own. */
  static Clock system() {
    return new SystemClock();
  }
}
