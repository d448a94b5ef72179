package corewright.station.web.door;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Counts wrong passwords, by name and by address: five in a quarter of an hour, then a pause. */
final class Tries {
  private static final Duration WINDOW = Duration.ofMinutes(15);
  private static final int MOST = 5;
  private static final int MOST_KEYS = 10_000;

  private final Map<String, Deque<Instant>> wrong = new ConcurrentHashMap<>();
  private final Clock clock;

  Tries(Clock clock) {
    this.clock = clock;
  }

  /** Whether this name or address has to wait. */
  boolean mustWait(String name, String address) {
    return count("name " + name) >= MOST || count("from " + address) >= MOST * 4;
  }

  void failed(String name, String address) {
    Instant now = clock.wall();
    if (wrong.size() > MOST_KEYS) {
      wrong.values().removeIf(d -> d.isEmpty() || d.peekLast().isBefore(now.minus(WINDOW)));
    }
    note("name " + name, now);
    note("from " + address, now);
  }

  void succeeded(String name) {
    wrong.remove("name " + name);
  }

  private void note(String key, Instant now) {
    wrong.compute(
        key,
        (k, old) -> {
          Deque<Instant> times = old == null ? new ArrayDeque<>() : old;
          times.addLast(now);
          return times;
        });
  }

  private int count(String key) {
    Instant from = clock.wall().minus(WINDOW);
    Deque<Instant> kept =
        wrong.computeIfPresent(
            key,
            (k, times) -> {
              times.removeIf(t -> t.isBefore(from));
              return times.isEmpty() ? null : times;
            });
    return kept == null ? 0 : kept.size();
  }
}
