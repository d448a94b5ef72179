package corewright.measures.hold;

import java.util.ArrayList;
import java.util.List;

/**
 * Walks along the load current and cuts it into plateaus. A plateau ends where a few blocks in a
 * row are more than half a step away from its recent mean, and the next begins where the current
 * has stayed within one step for as long as the shortest hold. What returns to its old level is a
 * pulse and no new plateau.
 */
final class LevelTracker {
  /** A level is a hold from this length on, s; shorter ones are pulses. */
  private static final double SHORTEST_HOLD_S = 1e-3;

  private static final int FEWEST_BLOCKS = 3;

  /** The level that a block is held against is the mean over this many shortest holds. */
  private static final int MEMORY = 8;

  private final LoadBlocks blocks;
  private final int shortest;
  private final int inARow;

  LevelTracker(LoadBlocks blocks, double sampleRate_Hz) {
    this.blocks = blocks;
    shortest =
        Math.max(FEWEST_BLOCKS, (int) Math.ceil(SHORTEST_HOLD_S * sampleRate_Hz / blocks.size()));
    inARow = shortest < 6 ? 2 : 3;
  }

  /** Plateaus in order; empty where the current is never settled. */
  List<Plateau> plateaus() {
    List<Plateau> found = new ArrayList<>();
    int start = settled(0);
    int pulses = 0;
    while (start >= 0) {
      int end = departure(start);
      Plateau here = plateau(start, end, pulses);
      pulses = 0;
      if (!found.isEmpty() && sameLevel(found.get(found.size() - 1), here)) {
        here = found.remove(found.size() - 1).joined(here, 1);
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

  /** First block at or after {@code from} from which the current stays within one step, or −1. */
  private int settled(int from) {
    int start = from;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < blocks.count(); i++) {
      low = Math.min(low, blocks.current_A(i));
      high = Math.max(high, blocks.current_A(i));
      if (high - low > blocks.threshold_A()) {
        // Begin again after the last block that is more than a step from this one.
        int j = i;
        low = blocks.current_A(i);
        high = blocks.current_A(i);
        while (Math.max(high, blocks.current_A(j - 1)) - Math.min(low, blocks.current_A(j - 1))
            <= blocks.threshold_A()) {
          j--;
          low = Math.min(low, blocks.current_A(j));
          high = Math.max(high, blocks.current_A(j));
        }
        start = j;
      }
      if (i - start + 1 >= shortest) {
        return start;
      }
    }
    return -1;
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

  private Plateau plateau(int from, int to, int pulses) {
    int tail = Math.max(from, to - MEMORY * shortest);
    return new Plateau(
        from, to, blocks.meanCurrent_A(tail, to), blocks.meanOutput_V(tail, to), pulses);
  }
}
