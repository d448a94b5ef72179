package corewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Joins trains of pulses into the hold they belong to: at least {@value #FEWEST} excursions in a
 * row from the same level, each too short to be judged by itself; and single excursions that are
 * far shorter than their neighbours, as an intermittent contact makes them.
 */
final class PulseTrains {
  private static final int FEWEST = 4;

  /** Too short to be a hold where nobody said how long settling takes, s. */
  private static final double SHORT_S = 2e-3;

  private static final int FAR_SHORTER = 50;

  /** A single excursion is longer than this only where it was asked for, s. */
  private static final double MOMENT_S = 0.02;

  private final double block_s;
  private final double short_s;
  private final LevelTracker tracker;

  PulseTrains(double block_s, Optional<Double> unjudged_s, LevelTracker tracker) {
    this.block_s = block_s;
    this.short_s = unjudged_s.orElse(SHORT_S);
    this.tracker = tracker;
  }

  List<Plateau> joined(List<Plateau> plateaus) {
    List<Plateau> out = new ArrayList<>();
    int i = 0;
    while (i < plateaus.size()) {
      Plateau base = plateaus.get(i);
      int last = i;
      while (last + 2 < plateaus.size() && excursion(base, plateaus, last + 1)) {
        last += 2;
      }
      int pulses = (last - i) / 2;
      if (pulses > 0 && (isTrain(plateaus, i, last) || allFarShorter(plateaus, i, last))) {
        out.add(base.joined(plateaus.get(last)));
        i = last + 1;
      } else {
        out.add(base);
        i++;
      }
    }
    return out;
  }

  private boolean excursion(Plateau base, List<Plateau> all, int at) {
    return length_s(all.get(at)) < Math.max(short_s, MOMENT_S)
        && tracker.sameLevel(base, all.get(at + 1));
  }

  private boolean isTrain(List<Plateau> all, int first, int last) {
    if (last - first < 2 * FEWEST) {
      return false;
    }
    for (int i = first + 1; i < last; i += 2) {
      if (length_s(all.get(i)) >= short_s) {
        return false;
      }
    }
    return true;
  }

  private boolean allFarShorter(List<Plateau> all, int first, int last) {
    for (int i = first + 1; i < last; i += 2) {
      double least = Math.min(length_s(all.get(i - 1)), length_s(all.get(i + 1)));
      if (FAR_SHORTER * length_s(all.get(i)) > least) {
        return false;
      }
    }
    return true;
  }

  private double length_s(Plateau plateau) {
    return plateau.length() * block_s;
  }
}
