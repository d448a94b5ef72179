package corewright.measures.hold;

import corewright.measures.Capture;
import corewright.measures.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the holds of a capture in the measured load current.
 *
 * <p>Commanded steps are not asked: a dead unit carries no current however the load is set, and is
 * one hold. Where the output is too low for an electronic load to draw its current, the current is
 * ignored, so that a unit which hiccups to zero under a constant load is in one hold as well.
 */
public final class HoldFinder {
  private HoldFinder() {}

  /**
   * Holds in order, at least one, without gaps between them, from 0 to the end of the record.
   *
   * @param unjudged_s settle and guard together where they are given: a pulse train whose pulses
   *     are shorter than this is one hold
   */
  public static List<Hold> find(Capture capture, Optional<Double> unjudged_s) {
    double rate = capture.sampleRate_Hz();
    double end_s = capture.size() / rate;
    if (capture.load().isEmpty() || capture.size() < 2) {
      return List.of(new Hold(0, end_s, false, 0));
    }
    Waveform load = capture.load().get();
    LoadBlocks blocks = LoadBlocks.of(capture, load);
    LevelTracker tracker = new LevelTracker(blocks, rate);
    List<Plateau> plateaus = explained(tracker.plateaus(), tracker);
    double blockLength_s = blocks.size() / rate;
    plateaus = new PulseTrains(blockLength_s, unjudged_s, tracker).joined(plateaus);
    List<Hold> holds = new ArrayList<>();
    double start_s = 0;
    for (int i = 0; i < plateaus.size(); i++) {
      boolean last = i + 1 == plateaus.size();
      double to_s = last ? end_s : edge(blocks, load, plateaus.get(i), plateaus.get(i + 1)) / rate;
      holds.add(new Hold(start_s, to_s, i > 0, plateaus.get(i).pulses()));
      start_s = to_s;
    }
    return holds.isEmpty() ? List.of(new Hold(0, end_s, false, 0)) : List.copyOf(holds);
  }

  private static double edge(LoadBlocks blocks, Waveform load, Plateau before, Plateau after) {
    int left = before.to() - 1;
    int right = after.from();
    if (blocks.hidden(left, right)) {
      // The change is hidden where the load could not draw: the middle of that is the best guess.
      return (blocks.sample(left) + blocks.size() + blocks.sample(right)) / 2.0;
    }
    int from = blocks.sample(left);
    int to = Math.min(load.size() - 1, blocks.sample(right) + blocks.size() - 1);
    return EdgeLocator.middle(load, from, to, before.level_A(), after.level_A());
  }

  /** Joins neighbours whose currents differ only because the output does, as a resistor's would. */
  private static List<Plateau> explained(List<Plateau> plateaus, LevelTracker tracker) {
    List<Plateau> joined = new ArrayList<>();
    for (Plateau next : plateaus) {
      if (!joined.isEmpty()) {
        Plateau last = joined.get(joined.size() - 1);
        if (tracker.sameLevel(last, next) || sameConductance(last, next)) {
          joined.set(joined.size() - 1, last.joined(next, 0));
          continue;
        }
      }
      joined.add(next);
    }
    return joined;
  }

  private static boolean sameConductance(Plateau a, Plateau b) {
    double high = Math.max(a.output_V(), b.output_V());
    double low = Math.min(a.output_V(), b.output_V());
    double one = a.level_A() / a.output_V();
    double other = b.level_A() / b.output_V();
    return high - low > 0.05 * high
        && Math.abs(one - other) < 0.03 * Math.max(Math.abs(one), Math.abs(other));
  }
}
