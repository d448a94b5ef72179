package corewright.bench.port.serial;

import java.time.Duration;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Closes a port whose peer has stopped reading: on Linux the library's write has no time limit, and
 * closing the port from another thread is what frees it.
 */
final class WriteWatch {
  private static final ScheduledThreadPoolExecutor THREAD = thread();

  private WriteWatch() {}

  /**
   * Runs {@code rescue} on another thread if {@code writing} takes longer than {@code patience}.
   *
   * @return whether the rescue was started
   */
  static boolean over(Runnable writing, Duration patience, Runnable rescue) {
    Future<?> pending = THREAD.schedule(rescue, patience.toNanos(), TimeUnit.NANOSECONDS);
    try {
      writing.run();
    } finally {
      pending.cancel(false);
    }
    return !pending.isCancelled();
  }

  private static ScheduledThreadPoolExecutor thread() {
    ScheduledThreadPoolExecutor one =
        new ScheduledThreadPoolExecutor(
            1,
            task -> {
              Thread thread = new Thread(task, "serial-write-watch");
              thread.setDaemon(true);
              return thread;
            });
    one.setRemoveOnCancelPolicy(true);
    return one;
  }
}
