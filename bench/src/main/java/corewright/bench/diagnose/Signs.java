package corewright.bench.diagnose;

import corewright.bench.record.Judgement;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.List;
import java.util.stream.Stream;

/** Every sign that a run allows; a trait without its readings gives none. */
final class Signs {
  private Signs() {}

  static List<Seen> of(MeasuredRun run, Family family, Profile profile, Judgement judgement) {
    Stream<Seen> before = new PowerUps(run, family, profile).seen(judgement);
    Look look = new Look(run, family);
    if (look.holds().isEmpty()) {
      return before.toList();
    }
    Siblings siblings = Siblings.of(profile);
    return Stream.of(
            new Levels(look).seen(),
            new Shapes(look, siblings).seen(),
            new Ripples(look).seen(),
            new Powers(look, siblings).seen(),
            before)
        .flatMap(s -> s)
        .toList();
  }
}
