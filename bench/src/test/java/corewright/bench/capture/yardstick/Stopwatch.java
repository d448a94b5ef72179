package corewright.bench.capture.yardstick;

import java.lang.management.ManagementFactory;

/**
 * Wall time; with {@code -Dyardstick.clock=cpu} the time this thread was given by the processor,
 * which says more on a computer that has other work. What several threads do has wall time only.
 */
final class Stopwatch {
  private static final boolean CPU = "cpu".equals(System.getProperty("yardstick.clock"));

  private final boolean cpu;
  private final long start;

  private Stopwatch(boolean cpu) {
    this.cpu = cpu;
    start = nanos();
  }

  static Stopwatch ofThisThread() {
    return new Stopwatch(CPU);
  }

  static Stopwatch ofSeveral() {
    return new Stopwatch(false);
  }

  double seconds() {
    return (nanos() - start) * 1e-9;
  }

  private long nanos() {
    return cpu ? ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() : System.nanoTime();
  }
}
