package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import java.time.Instant;
import java.util.List;
import java.util.Random;

/**
 * A core of a known variant, read by somebody who errs as often as the key says. Labels err as
 * labels do: mostly all at once, because the whole label is another unit's.
 */
final class SimulatedCore {
  private static final double LABEL_OF_ANOTHER = 0.2;

  private final Variant variant;
  private final Variant labelled;
  private final Random random;

  SimulatedCore(Family family, Random random) {
    this.random = random;
    variant = draw(family);
    labelled = random.nextDouble() < LABEL_OF_ANOTHER ? draw(family) : variant;
  }

  Variant variant() {
    return variant;
  }

  CueAnswer answer(Cue cue) {
    return new CueAnswer(cue.id(), read(cue), "simulated", Instant.EPOCH);
  }

  private String read(Cue cue) {
    boolean label = cue.travelsWith() == TravelsWith.LABEL;
    List<String> true_ = Votes.expected(cue, label ? labelled : variant);
    List<String> all = cue.answers();
    if (true_.isEmpty()) {
      return all.get(random.nextInt(all.size()));
    }
    // what is left of the stated errors once swapped labels have had their share
    double right = label ? cue.reliability() / (1 - LABEL_OF_ANOTHER) : cue.reliability();
    List<String> others = all.stream().filter(a -> !true_.contains(a)).toList();
    List<String> from = random.nextDouble() < right || others.isEmpty() ? true_ : others;
    return from.get(random.nextInt(from.size()));
  }

  private Variant draw(Family family) {
    double at = random.nextDouble();
    for (Variant v : family.variants()) {
      at -= v.prior();
      if (at < 0) {
        return v;
      }
    }
    return family.variants().get(0);
  }
}
