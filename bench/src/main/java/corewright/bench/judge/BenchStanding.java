package corewright.bench.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How a bench stands, told from what was written down about it: whether it is locked, and which
 * results on it are in doubt. Pure.
 *
 * @param locked why nothing but reference units may be run, each a sentence; empty: anything may
 * @param doubts stretches of the record in which no result of this bench is to be believed
 */
public record BenchStanding(List<String> locked, List<Doubt> doubts) {
  public BenchStanding {
    locked = List.copyOf(locked);
    doubts = List.copyOf(doubts);
  }

  /**
   * Results that were written down after {@code after} and before {@code until}: since a check that
   * was good, up to one that was not.
   *
   * @param why the first sentence of what was found
   */
  public record Doubt(long after, long until, String why) {}

  /** From the beginning on; the events in the order of their places. */
  public static BenchStanding of(List<BenchEvent> events) {
    Fold fold = new Fold();
    events.forEach(fold::add);
    return new BenchStanding(
        fold.against.values().stream().flatMap(List::stream).toList(), fold.doubts);
  }

  /** Why the result that was written down at a place is in doubt; empty if it is not. */
  public Optional<String> suspect(long place) {
    return doubts.stream()
        .filter(d -> d.after() < place && place < d.until())
        .map(Doubt::why)
        .findFirst();
  }

  private static final class Fold {
    private static final String SOMEBODY = "";
    private final Map<String, List<String>> against = new LinkedHashMap<>();
    private final Map<String, Long> good = new HashMap<>();
    private final List<Doubt> doubts = new ArrayList<>();
    private int before;

    void add(BenchEvent event) {
      switch (event.what()) {
        case CHECKED_GOOD -> {
          good.put(event.unit(), event.place());
          against.remove(event.unit());
          if (against.keySet().equals(Set.of(SOMEBODY))) {
            against.clear();
          }
        }
        case CHECKED_BAD -> {
          begin();
          against.put(event.unit(), event.words());
          // What another unit showed in between says nothing of what this one found.
          doubts.add(since(Optional.ofNullable(good.get(event.unit())), event));
        }
        case LOCKED -> {
          if (event.unit().isEmpty()) {
            begin();
            against.put(SOMEBODY, event.words());
            doubts.add(since(good.values().stream().max(Long::compare), event));
          }
        }
        case UNLOCKED -> against.clear();
        case CLEARED -> {
          against.clear();
          doubts.subList(before, doubts.size()).clear();
        }
        case CALIBRATED -> good.put(event.unit(), event.place());
        case FOUND_OUT -> {
          // before those of a lock: a channel that was off is nothing that anybody may declare
          // right
          doubts.add(before++, since(Optional.ofNullable(good.get(event.unit())), event));
          good.put(event.unit(), event.place());
        }
      }
    }

    /** What an owner may declare to stand is what the present lock has put in doubt. */
    private void begin() {
      if (against.isEmpty()) {
        before = doubts.size();
      }
    }

    private static Doubt since(Optional<Long> good, BenchEvent event) {
      return new Doubt(
          good.orElse(0L), event.place(), event.words().stream().findFirst().orElse(""));
    }
  }
}
