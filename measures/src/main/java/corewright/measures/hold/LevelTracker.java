package corewright.measures.hold;

import java.util.ArrayList;
import java.util.List;

/**
 * Walks along the load current and cuts it into plateaus. A plateau ends where a few blocks in a
 * row are more than half a step away from its recent mean, and the next begins where the current
 * has stayed within one step, without moving, for as long as the shortest hold. What returns to its
 * old level is a pulse and no new plateau.
 */
final class LevelTracker {
  private static final int FEWEST_BLOCKS = 3;

  /** The level that a block is held against is the mean over this many shortest holds. */
  private static final int MEMORY = 8;

  /** A level moves if its halves differ by this part of a step. */
  private static final double MOVING = 0.25;

  /** ... and by this many standard deviations. */
  private static final double SURELY = 4;

  private final LoadBlocks blocks;
  private final int shortest;
  private final int inARow;

  /**
   * @param shortest samples of the shortest hold
   */
  LevelTracker(LoadBlocks blocks, int shortest) {
    this.blocks = blocks;
    this.shortest = Math.max(FEWEST_BLOCKS, shortest / blocks.size());
    inARow = this.shortest < 6 ? 2 : 3;
  }

  /** Plateaus in order; empty where the current is never settled. */
  List<Plateau> plateaus() {
    List<Plateau> found = new ArrayList<>();
    int start = settled(0);
    while (start >= 0) {
      int end = departure(start);
      Plateau here = plateau(start, end);
      if (!found.isEmpty() && sameLevel(found.get(found.size() - 1), here)) {
        here = found.remove(found.size() - 1).joined(here);
      }
      found.add(here);
      start = end < blocks.count() ? settled(end) : -1;
    }
    return found;
  }

  /** Whether two plateaus are one step or less apart. */
  boolean sameLevel(Plateau a, Plateau b) {
    return Math.abs(a.level_A() - b.level_A()) < blocks.threshold_A();
  }

  /** First block at or after {@code from} from which a whole shortest hold is level, or −1. */
  private int settled(int from) {
    int start = from;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int i = from;
    while (i < blocks.count()) {
      low = Math.min(low, blocks.current_A(i));
      high = Math.max(high, blocks.current_A(i));
      if (high - low > blocks.threshold_A()) {
        // Begin again after the last block that is more than a step from this one.
        start = i;
        low = blocks.current_A(i);
        high = low;
        while (within(low, high, blocks.current_A(start - 1))) {
          start--;
          low = Math.min(low, blocks.current_A(start));
          high = Math.max(high, blocks.current_A(start));
        }
      }
      i++;
      if (i - start == shortest) {
        if (!moves(start)) {
          return start;
        }
        start += Math.max(1, shortest / 8);
        i = start;
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
      }
    }
    return -1;
  }

  private boolean within(double low, double high, double next) {
    return Math.max(high, next) - Math.min(low, next) <= blocks.threshold_A();
  }

  /** Whether the second half of a shortest hold is elsewhere than its first. */
  private boolean moves(int start) {
    int half = shortest / 2;
    double first = blocks.meanCurrent_A(start, start + half);
    double second = blocks.meanCurrent_A(start + shortest - half, start + shortest);
    double noise = blocks.noise_A() * Math.sqrt(2.0 / half);
    return Math.abs(second - first) > Math.max(MOVING * blocks.threshold_A(), SURELY * noise);
  }

  /** First block of the run that leaves the level, or the number of blocks. */
  private int departure(int start) {
    int memory = MEMORY * shortest;
    double sum = 0;
    for (int i = start; i < start + shortest; i++) {
      sum += blocks.current_A(i);
    }
    int held = shortest;
    int away = 0;
    double side = 0;
    for (int i = start + shortest; i < blocks.count(); i++) {
      double off = blocks.current_A(i) - sum / held;
      if (Math.abs(off) > blocks.threshold_A() / 2) {
        away = Math.signum(off) == side ? away + 1 : 1;
        side = Math.signum(off);
        if (away == inARow) {
          return i - inARow + 1;
        }
        continue; // what is away does not move the level
      }
      away = 0;
      sum += blocks.current_A(i);
      held++;
      if (held > memory) {
        sum *= (double) memory / held;
        held = memory;
      }
    }
    return blocks.count();
  }

  private Plateau plateau(int from, int to) {
    int tail = Math.max(from, to - MEMORY * shortest);
    return new Plateau(from, to, blocks.meanCurrent_A(tail, to), blocks.meanOutput_V(tail, to));
  }
}
