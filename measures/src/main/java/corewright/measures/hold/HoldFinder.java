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
  private static final double SHORTEST_HOLD_S = 1e-3;
  private static final double SHORTEST_OF_LONG_S = 0.06;
  private static final double HOLDS_AT_MOST = 500;
  private static final int ENOUGH_SAMPLES = 16;
  private static final int FEWEST_IN_RECORD = 50;

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
    int shortest = shortest(capture.size(), rate);
    Track track = Track.of(LoadBlocks.of(capture, load, shortest), shortest);
    List<Plateau> plateaus =
        new PulseTrains(track.blocks.size() / rate, unjudged_s, track.tracker)
            .joined(track.plateaus);
    Excursions excursions = new Excursions(capture.output(), load, track.blocks);
    List<Hold> holds = new ArrayList<>();
    double start_s = 0;
    for (int i = 0; i < plateaus.size(); i++) {
      boolean last = i + 1 == plateaus.size();
      double to = last ? capture.size() : track.edge(load, plateaus.get(i), plateaus.get(i + 1));
      int calm = track.blocks.sample(plateaus.get(i).from()) + shortest / 2;
      int left = last ? capture.size() : track.blocks.sample(plateaus.get(i).to() - 1);
      int pulses = excursions.count(plateaus.get(i), calm, left);
      holds.add(new Hold(start_s, to / rate, i > 0, pulses));
      start_s = to / rate;
    }
    return holds.isEmpty() ? List.of(new Hold(0, end_s, false, 0)) : List.copyOf(holds);
  }

  /**
   * How long a level must last to be a hold, and must stand still to be a level, in samples. A long
   * record has long holds, and perhaps a person turning a knob between them; a slow one needs some
   * samples to see that.
   */
  private static int shortest(int samples, double rate_Hz) {
    double time_s =
        Math.max(SHORTEST_HOLD_S, Math.min(SHORTEST_OF_LONG_S, samples / rate_Hz / HOLDS_AT_MOST));
    int enough = Math.min(ENOUGH_SAMPLES, samples / FEWEST_IN_RECORD);
    return Math.max(enough, (int) Math.ceil(time_s * rate_Hz));
  }

  /** Plateaus and what they were found in. */
  private record Track(LoadBlocks blocks, LevelTracker tracker, List<Plateau> plateaus) {

    static Track of(LoadBlocks blocks, int shortest) {
      LevelTracker tracker = new LevelTracker(blocks, shortest);
      return new Track(blocks, tracker, explained(tracker.plateaus(), tracker));
    }

    /** Sample at which one plateau gives way to the next, with its fraction. */
    double edge(Waveform load, Plateau before, Plateau after) {
      int left = before.to() - 1;
      int right = after.from();
      if (blocks.hidden(left, right)) {
        // The change is hidden where the load could not draw: the middle of that is the best guess.
        return (blocks.sample(left) + blocks.size() + blocks.sample(right)) / 2.0;
      }
      int to = Math.min(load.size() - 1, blocks.sample(right) + blocks.size() - 1);
      return EdgeLocator.middle(load, blocks.sample(left), to, before.level_A(), after.level_A());
    }
  }

  /** Joins neighbours whose currents differ only because the output does, as a resistor's would. */
  private static List<Plateau> explained(List<Plateau> plateaus, LevelTracker tracker) {
    List<Plateau> joined = new ArrayList<>();
    for (Plateau next : plateaus) {
      int end = joined.size() - 1;
      boolean same =
          end >= 0
              && (tracker.sameLevel(joined.get(end), next)
                  || sameConductance(joined.get(end), next));
      if (same) {
        joined.set(end, joined.get(end).joined(next));
      } else {
        joined.add(next);
      }
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
