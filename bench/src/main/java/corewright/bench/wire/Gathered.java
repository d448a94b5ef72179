package corewright.bench.wire;

import corewright.bench.wire.Scans.Batch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Samples that come one by one, gathered into batches that have no gap. */
final class Gathered {
  /** More than these in a row, and it is no sample that is missing. */
  private static final int MOST_BROKEN = 5;

  private final int channels;
  private int perBatch = 1;
  private int broken;
  private Optional<Sample> ahead = Optional.empty();

  Gathered(int channels) {
    this.channels = channels;
  }

  /**
   * One sample of all channels.
   *
   * @param index since the start
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, to one reader, never compared
  record Sample(long index, short[] codes) {}

  void start(int wanted) {
    perBatch = wanted;
    broken = 0;
    ahead = Optional.empty();
  }

  /** One has arrived broken; whether too many have. */
  boolean isTooMuch() {
    return ++broken > MOST_BROKEN;
  }

  /** The next batch; empty if {@code take} gave nothing at once. */
  Optional<Batch> next(Supplier<Optional<Sample>> take) {
    List<short[]> taken = new ArrayList<>();
    long first = 0;
    int brokenBefore = 0;
    while (taken.size() < perBatch) {
      Optional<Sample> next = ahead.or(take);
      ahead = Optional.empty();
      if (next.isEmpty()) {
        break;
      }
      if (taken.isEmpty()) {
        first = next.get().index();
        brokenBefore = broken;
        broken = 0;
      } else if (next.get().index() != first + taken.size()) {
        ahead = next; // a gap: it begins the next batch
        break;
      }
      taken.add(next.get().codes());
    }
    return taken.isEmpty()
        ? Optional.empty()
        : Optional.of(new Batch(first, codes(taken), brokenBefore));
  }

  private short[][] codes(List<short[]> taken) {
    short[][] codes = new short[channels][taken.size()];
    for (int i = 0; i < taken.size(); i++) {
      for (int c = 0; c < channels; c++) {
        codes[c][i] = taken.get(i)[c];
      }
    }
    return codes;
  }
}
