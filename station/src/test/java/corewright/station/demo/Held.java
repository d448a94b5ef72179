package corewright.station.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * What this process holds at a moment in which nothing runs.
 *
 * @param heap_MB in use after it was cleaned
 * @param files open files, serial ports and both ends of pseudo-terminals among them (proc(5))
 * @param begun runs, and files, that were begun and not brought to their end
 */
record Held(double heap_MB, long files, int threads, long begun) {
  private static final Path OPEN = Path.of("/proc/self/fd");

  /**
   * @param captures folder of the shop's captures
   */
  static Held now(Path captures) {
    for (int i = 0; i < 3; i++) {
      System.gc(); // once more for what a finalizer or a cleaner has let go
    }
    return new Held(
        ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6,
        count(OPEN, ""),
        ManagementFactory.getThreadMXBean().getThreadCount(),
        count(captures, ".part") + count(captures, ".begun"));
  }

  /** Files, threads and begun runs more than there were; one less makes no other good. */
  long handlesSince(Held before) {
    return Math.max(0, files - before.files)
        + Math.max(0, threads - before.threads)
        + Math.max(0, begun - before.begun);
  }

  private static long count(Path folder, String end) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.toString().endsWith(end)).count();
    } catch (IOException unknown) {
      throw new UncheckedIOException(unknown);
    }
  }
}
