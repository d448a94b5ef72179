package corewright.bench.record;

import java.time.Instant;
import java.util.List;

/**
 * What of a unit's life is not of one visit, and is printed all the same.
 *
 * @param opened how often it was opened in this shop, on all visits so far
 * @param relabelled what was said of its label and serial since it first came, the oldest first
 */
public record Past(int opened, List<Relabelled> relabelled) {
  /** Nothing is known. */
  public static final Past NONE = new Past(0, List.of());

  public Past {
    relabelled = List.copyOf(relabelled);
  }

  /**
   * Its serial or its label is another one than was written down.
   *
   * @param was what stood before, as {@code serial 4417-2208}
   * @param now what stands since
   */
  public record Relabelled(String was, String now, String reason, String who, Instant at) {}
}
