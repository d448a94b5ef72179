package corewright.station.work;

import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

  /** The unit of a run by its name; empty where that is no name of a run on this bench. */
  static Optional<String> tag(String run, String bench) {
    Matcher name = Pattern.compile("(.+)-[a-z]+-[0-9]+-[0-9a-f]{4}").matcher(run);
    return name.matches() && name.group(1).startsWith(bench + "-")
        ? Optional.of(name.group(1).substring(bench.length() + 1))
        : Optional.empty();
  }
}
