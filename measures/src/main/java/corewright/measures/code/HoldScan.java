package corewright.measures.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Goes through a record of any length once, block by block, and keeps what it says of each hold: a
 * hold begins where the load jumps. Of the record itself it holds only what came while the output
 * was settling. Not thread-safe.
 */
public final class HoldScan {
  private final Jumps jumps;
  private final int apart;
  private final int settle;
  private final double band;
  private final CodeCounts counts = new CodeCounts();
  private final List<HoldCodes> holds = new ArrayList<>();
  private final int[] settling;
  private long taken;
  private long start;
  private long lastJump = Long.MIN_VALUE / 2;
  private int lastLoad;

  /**
   * @param apart a jump at most this many samples after another is no new step
   * @param settle samples after a step that are not in its window; even, at least 2
   * @param band half-width of the recovery band about the window's mean, codes of the output
   */
  public HoldScan(Jumps jumps, int apart, int settle, double band) {
    if (settle < 2 || settle % 2 != 0) {
      throw new IllegalArgumentException("settling takes an even number of samples, not " + settle);
    }
    this.jumps = jumps;
    this.apart = apart;
    this.settle = settle;
    this.band = band;
    settling = new int[settle / 2];
  }

  /**
   * Takes the next block.
   *
   * @throws IllegalArgumentException unless both channels have as many codes
   */
  public void add(Codes load, Codes output) {
    if (load.size() != output.size()) {
      throw new IllegalArgumentException(load.size() + " codes of the load, " + output.size());
    }
    if (load.size() == 0) {
      return;
    }
    int from = 0;
    if (taken > 0 && Math.abs(load.at(0) - lastLoad) > jumps.threshold()) {
      from = step(output, from, 0);
    }
    for (int jump : jumps.in(load, 0, load.size())) {
      from = step(output, from, jump);
    }
    hold(output, from, output.size());
    taken += output.size();
    lastLoad = load.at(load.size() - 1);
  }

  /** Ends a hold where a jump begins another; up to where the block has been used. */
  private int step(Codes output, int from, int jump) {
    long at = taken + jump;
    boolean isNew = at - lastJump > apart;
    lastJump = at;
    if (!isNew) {
      return from;
    }
    hold(output, from, jump);
    end(at);
    return jump;
  }

  /** Adds part of a block to the hold that is running. */
  private void hold(Codes output, int from, int to) {
    long inHold = taken + from - start;
    int until = (int) Math.min(to, Math.max(from, from + settle - inHold));
    output.copyTo(settling, (int) Math.min(settle, inHold), from, until);
    counts.add(output, until, to);
  }

  private void end(long next) {
    Optional<CodeStatistics> window =
        counts.count() == 0 ? Optional.empty() : Optional.of(counts.take());
    boolean edge = !holds.isEmpty();
    holds.add(new HoldCodes(start, window, window.filter(w -> edge).map(this::answer)));
    start = next;
  }

  private EdgeAnswer answer(CodeStatistics window) {
    return EdgeAnswer.ofSettling(Codes.ofPairs(settling, settle), window, band);
  }

  /** Ends the record; its holds in order. */
  public List<HoldCodes> finish() {
    if (taken > start) {
      end(taken);
    }
    return List.copyOf(holds);
  }
}
