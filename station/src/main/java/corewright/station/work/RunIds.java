package corewright.station.work;

import java.util.Locale;
import java.util.random.RandomGenerator;

/**
 * Names for runs, unique across benches without asking anyone: bench, what the unit is at, and a
 * random part. A run that is handed in twice keeps its name, so nothing is counted double.
 */
public final class RunIds {
  private final String bench;
  private final RandomGenerator random;

  /**
   * Names the runs of one bench.
   *
   * @param random seeded for a demonstration, secure otherwise
   */
  public RunIds(String bench, RandomGenerator random) {
    this.bench = bench;
    this.random = random;
  }

  /** As {@code bench-1-U-00418Q-arrival-1-7f3a}. */
  String next(String tag, String purpose, int number) {
    return String.format(
        Locale.ROOT, "%s-%s-%s-%d-%04x", bench, tag, purpose, number, random.nextInt(0x10000));
  }
}
