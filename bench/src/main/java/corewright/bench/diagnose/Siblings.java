package corewright.bench.diagnose;

import corewright.measures.Figures;
import corewright.profiles.Profile;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What healthy units of a family show in one profile: median and spread of the traits that are held
 * against siblings.
 *
 * @param known by trait; a trait without an entry is not judged
 */
record Siblings(Map<Trait, Spread> known) {

  Siblings {
    known = Map.copyOf(known);
  }

  /**
   * Of the units drawn for {@link SiblingTable}, in this profile; what was not read there, in the
   * last of the family's that is listed.
   */
  static Siblings of(Profile profile) {
    Map<Trait, Spread> known = new EnumMap<>(Trait.class);
    known.putAll(in(id -> id.startsWith(profile.family() + "-")).known());
    known.putAll(in(id -> id.equals(profile.id())).known());
    return new Siblings(known);
  }

  private static Siblings in(Predicate<String> profile) {
    Map<Trait, Spread> known = new EnumMap<>(Trait.class);
    for (String line : SiblingTable.TEXT.split("\n", -1)) {
      String[] words = line.strip().split(" +", -1);
      if (words.length == 4 && profile.test(words[0])) {
        known.put(
            Trait.valueOf(words[1]),
            new Spread(Double.parseDouble(words[2]), Double.parseDouble(words[3])));
      }
    }
    return new Siblings(known);
  }

  Optional<Spread> of(Trait trait) {
    return Optional.ofNullable(known.get(trait));
  }

  /** Median and standard deviation, in the trait's unit. */
  record Spread(double median, double deviation) {

    /** Above the siblings by so many deviations, and by that factor at least. */
    boolean exceeds(double value, double deviations, double factor) {
      return value > median + deviations * deviation && value > factor * median;
    }

    /** As {@code "3.10 V/A where healthy siblings show 1.57 ± 0.05 V/A"}. */
    String words(double value, int decimals, String unit) {
      return Figures.number(value, decimals)
          + " "
          + unit
          + " where healthy siblings show "
          + Figures.number(median, decimals)
          + " ± "
          + Figures.number(2 * deviation, decimals)
          + " "
          + unit;
    }
  }
}
