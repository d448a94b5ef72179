package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * How well a key works: simulated cores, asked the best next question until nothing would change
 * the decision, and the same cores asked in the order of the file.
 *
 * @param identified share of all cores
 * @param wrong share of those identified
 * @param questions mean for each core
 * @param fixedOrder mean for each core when asked in the order of the file, to the same end
 */
record KeyStudy(int cores, double identified, double wrong, double questions, double fixedOrder) {

  static KeyStudy of(List<Family> families, int cores, long seed) {
    Random random = new Random(seed);
    int identified = 0;
    int wrong = 0;
    int asked = 0;
    int inOrder = 0;
    for (int i = 0; i < cores; i++) {
      Family family = families.get(i % families.size());
      long core = random.nextLong();
      SimulatedCore best = new SimulatedCore(family, new Random(core));
      List<CueAnswer> answers = new ArrayList<>();
      Optional<Cue> next = Identifier.next(family, answers, Map.of());
      while (next.isPresent()) {
        answers.add(best.answer(next.get()));
        next = Identifier.next(family, answers, Map.of());
      }
      Identification end = Identifier.identify(family, answers);
      asked += answers.size();
      if (end.band() == Band.IDENTIFIED) {
        identified++;
        wrong += end.variant().equals(best.variant().id()) ? 0 : 1;
      }
      inOrder += inOrder(family, new SimulatedCore(family, new Random(core)));
    }
    return new KeyStudy(
        cores,
        identified / (double) cores,
        wrong / (double) Math.max(1, identified),
        asked / (double) cores,
        inOrder / (double) cores);
  }

  private static int inOrder(Family family, SimulatedCore core) {
    List<CueAnswer> answers = new ArrayList<>();
    for (Cue cue : family.cues()) {
      if (Identifier.next(family, answers, Map.of()).isEmpty()) {
        break;
      }
      answers.add(core.answer(cue));
    }
    return answers.size();
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "key: cores=%d identified=%.3f wrong=%.4f questions=%.2f fixedOrder=%.2f",
        cores,
        identified,
        wrong,
        questions,
        fixedOrder);
  }
}
