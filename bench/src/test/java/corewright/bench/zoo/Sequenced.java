package corewright.bench.zoo;

import corewright.bench.record.Finding;
import corewright.measures.Reading;
import corewright.profiles.Profile;
import java.util.Locale;
import java.util.Map;

/** What a whole sequence came to, in lines for whoever looks at every reading of it. */
final class Sequenced {
  private Sequenced() {}

  static void say(Profile profile, ZooBench.Judged judged) {
    if (!Boolean.getBoolean("sequence.readings")) {
      return;
    }
    judged.run().readings().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(e -> e.getKey() + ": " + words(e.getValue()))
        .forEach(System.out::println);
    judged.run().notes().forEach(System.out::println);
    long asked =
        judged.judgement().findings().stream()
            .filter(f -> f.measurement().isPresent())
            .map(f -> f.limit().id())
            .distinct()
            .count();
    System.out.printf(
        Locale.ROOT,
        "sequence: profile=%s steps=%d limits=%d asked=%d met=%d verdict=%s%n",
        profile.id(),
        profile.steps().size(),
        profile.limits().size(),
        asked,
        judged.judgement().findings().stream()
            .filter(f -> f.outcome() == Finding.Outcome.PASS)
            .map(f -> f.limit().id())
            .distinct()
            .count(),
        judged.judgement().verdict().map(Enum::name).orElse("none"));
  }

  private static String words(Reading reading) {
    return reading
        .measurement()
        .map(Object::toString)
        .orElseGet(() -> ((Reading.NotMeasured) reading).reason());
  }
}
