package corewright.bench.diagnose;

import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.List;
import java.util.stream.Stream;

/** Every sign that a run allows; a trait without its readings gives none. */
final class Signs {
  private Signs() {}

  static List<Seen> of(MeasuredRun run, Family family, Profile profile, Judgement judgement) {
    Look look = new Look(run, family);
    if (look.holds().isEmpty()) {
      return judgement.verdict().filter(v -> v == Verdict.UNSAFE).isPresent()
          ? List.of(new Seen(Sign.POWER_UP_REFUSED, powerUp(judgement)))
          : List.of();
    }
    Siblings siblings = Siblings.of(profile);
    return Stream.of(
            new Levels(look).seen(),
            new Shapes(look, siblings).seen(),
            new Ripples(look).seen(),
            new Powers(look, siblings).seen(),
            Stream.of(new Seen(Sign.POWER_UP_PASSED, "it could be powered")))
        .flatMap(s -> s)
        .toList();
  }

  private static String powerUp(Judgement judgement) {
    return judgement.reasons().isEmpty()
        ? "it could not be powered behind the small current limit"
        : judgement.reasons().get(0);
  }
}
