package corewright.station.cli;

import corewright.bench.run.Stop;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C ends a run in the safe state before the program leaves: the interrupt sets the stop, and
 * the process waits until this is closed, which happens after the bench is safe.
 */
final class StopKeys implements AutoCloseable {
  /** Longer than the safe state takes when every instrument is silent. */
  private static final long SAFE_STATE_S = 20;

  private final Stop stop = new Stop();
  private final CountDownLatch left = new CountDownLatch(1);

  StopKeys() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::interrupted, "stop"));
  }

  Stop stop() {
    return stop;
  }

  private void interrupted() {
    if (left.getCount() == 0) {
      return; // the program leaves by itself
    }
    stop.request("The operator pressed Ctrl-C.");
    try {
      left.await(SAFE_STATE_S, TimeUnit.SECONDS);
    } catch (InterruptedException leaving) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    left.countDown();
  }
}
