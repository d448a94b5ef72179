package corewright.bench.diagnose;

import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Judgement;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Which group of components the readings point at. Pure. */
public final class Diagnostician {
  private static final double DETERMINED = 0.5;
  private static final int CANDIDATES = 3;

  /** A sign is evidence when it is so many times likelier with the group than without. */
  private static final double TELLING = 2;

  /** At least one sign that healthy units do not show must be so much likelier with the group. */
  private static final double SHOWN = 2;

  /**
   * Signs are not as independent as the product of their shares takes them for; this power on the
   * product makes the stated probabilities come true.
   */
  private static final double TEMPER = 0.8;

  private Diagnostician() {}

  /** As the other, with the trade's priors. */
  public static Diagnosis diagnose(
      MeasuredRun run, Family family, Profile profile, Judgement judgement) {
    return diagnose(run, family, profile, judgement, Priors.ofTrade());
  }

  /**
   * Weighs the signs of a run that did not pass.
   *
   * @param profile that was run; it says which healthy siblings the run is held against
   * @param priors what the shop found in units like it
   */
  public static Diagnosis diagnose(
      MeasuredRun run, Family family, Profile profile, Judgement judgement, Priors priors) {
    Optional<String> elsewhere = Elsewhere.of(judgement);
    if (elsewhere.isPresent()) {
      return Diagnosis.ofNothing(elsewhere.get());
    }
    List<Seen> seen = Signs.of(run, family, profile, judgement);
    if (seen.stream().allMatch(s -> s.sign().healthy())) {
      return Diagnosis.ofNothing(
          "Nothing in the readings points at a group; the limits that were missed stand beside.");
    }
    Map<Group, Double> posterior = Twins.together(seen, posterior(seen, priors));
    List<Group> ranked =
        posterior.entrySet().stream()
            .sorted(Map.Entry.<Group, Double>comparingByValue(Comparator.reverseOrder()))
            .limit(CANDIDATES)
            .map(Map.Entry::getKey)
            .toList();
    List<Candidate> candidates =
        ranked.stream()
            .map(g -> candidate(g, posterior.getOrDefault(g, 0.0), seen, ranked))
            .toList();
    return new Diagnosis(
        candidates,
        candidates.get(0).probability() >= DETERMINED && isShown(ranked.get(0), seen),
        Elsewhere.excluded(judgement));
  }

  private static Map<Group, Double> posterior(List<Seen> seen, Priors priors) {
    Map<Group, Double> weight = new EnumMap<>(Group.class);
    double sum = 0;
    for (Group group : Group.values()) {
      double log = 0;
      for (Seen s : seen) {
        log += Math.log(Signatures.of(group, s.sign()));
      }
      double w = priors.of(group) * Math.exp(TEMPER * log);
      weight.put(group, w);
      sum += w;
    }
    double all = sum;
    weight.replaceAll((g, w) -> w / all);
    return weight;
  }

  private static Candidate candidate(
      Group group, double probability, List<Seen> seen, List<Group> ranked) {
    Group rival = ranked.get(ranked.get(0) == group ? 1 : 0);
    return new Candidate(
        group.name(),
        group.words(),
        probability,
        ranked(seen, s -> ratio(group, s)),
        ranked(seen, s -> 1 / ratio(group, s)),
        next(group, rival, seen));
  }

  /** The fixture is tried before the unit that it refused with. */
  private static String next(Group group, Group rival, List<Seen> seen) {
    String measurement = Separation.between(group, rival);
    return seen.stream().anyMatch(s -> s.sign() == Sign.POWER_UP_REFUSED)
        ? "Power the empty fixture behind the same limit. If that takes nothing: " + measurement
        : measurement;
  }

  /** A group is named by what it changed, never by all else being in order. */
  private static boolean isShown(Group group, List<Seen> seen) {
    return seen.stream().anyMatch(s -> !s.sign().healthy() && ratio(group, s) >= SHOWN);
  }

  private static List<String> ranked(List<Seen> seen, ToDoubleFunction<Seen> strength) {
    return seen.stream()
        .filter(s -> strength.applyAsDouble(s) >= TELLING)
        .sorted(Comparator.comparingDouble(strength).reversed())
        .map(Seen::sentence)
        .toList();
  }

  /** How much likelier the sign is with this group at fault than with any of the others. */
  private static double ratio(Group group, Seen seen) {
    double others = 0;
    for (Group other : Group.values()) {
      others += other == group ? 0 : Signatures.of(other, seen.sign());
    }
    return Signatures.of(group, seen.sign()) * (Group.values().length - 1) / others;
  }
}
