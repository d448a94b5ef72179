package corewright.bench.diagnose;

import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.measures.MeasuredRun;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Writes {@link SiblingTable} and {@link SignatureTable} from units whose fault is known. */
public final class Counting {
  private static final List<Trait> SCALARS =
      List.of(Trait.STEP_FROM_REST, Trait.STEP_UNDER_LOAD, Trait.RINGING, Trait.IDLE, Trait.LOSS);

  private Counting() {}

  /**
   * One played unit.
   *
   * @param fault what is wrong with it; empty for a healthy one
   */
  public record Sample(
      Optional<UnitFault> fault,
      Family family,
      Profile profile,
      MeasuredRun run,
      Judgement judgement) {}

  /** Median and standard deviation (from the median of the deviations) of healthy units. */
  public static String siblings(List<Sample> samples) {
    Map<String, List<Double>> values = new TreeMap<>();
    for (Sample s : samples) {
      if (s.fault().isEmpty()) {
        Look look = new Look(s.run(), s.family());
        for (Trait trait : SCALARS) {
          Scalar.of(trait, look)
              .ifPresent(
                  v ->
                      values
                          .computeIfAbsent(s.profile().id() + " " + trait, k -> new ArrayList<>())
                          .add(v.value()));
        }
      }
    }
    StringBuilder table = new StringBuilder();
    values.forEach(
        (key, all) ->
            table.append(
                String.format(
                    Locale.ROOT, "%s %.4f %.4f%n", key, median(all), 1.4826 * deviation(all))));
    return table.toString();
  }

  private static double deviation(List<Double> values) {
    double middle = median(values);
    return median(values.stream().map(v -> Math.abs(v - middle)).toList());
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }

  /** How many units of each group that did not pass showed each sign. */
  public static String signatures(List<Sample> samples) {
    Map<Group, Map<Sign, Integer>> counts = new EnumMap<>(Group.class);
    for (Sample s : samples) {
      boolean bad = s.judgement().verdict().filter(v -> v != Verdict.PASS).isPresent();
      Optional<Group> group = s.fault().flatMap(Counting::group);
      if (bad && group.isPresent()) {
        Signs.of(s.run(), s.family(), s.profile(), s.judgement())
            .forEach(
                seen ->
                    counts
                        .computeIfAbsent(group.get(), g -> new EnumMap<>(Sign.class))
                        .merge(seen.sign(), 1, Integer::sum));
      }
    }
    StringBuilder table = new StringBuilder();
    counts.forEach(
        (group, signs) -> {
          table.append(group);
          signs.forEach((sign, n) -> table.append(' ').append(sign).append('=').append(n));
          table.append('\n');
        });
    return table.toString();
  }

  /** What a unit shows that healthy ones do not, and which traits could not be read. */
  public static String signs(Sample s) {
    List<Seen> seen = Signs.of(s.run(), s.family(), s.profile(), s.judgement());
    return seen.stream().map(Seen::sign).filter(sign -> !sign.healthy()).toList()
        + " unread "
        + Arrays.stream(Trait.values())
            .filter(t -> seen.stream().noneMatch(one -> one.sign().trait() == t))
            .toList();
  }

  /** The group that a fault belongs to; empty for one that load and line do not show. */
  public static Optional<Group> group(UnitFault fault) {
    return Optional.ofNullable(
        switch (fault) {
          case CAPACITANCE_LOST -> Group.OUTPUT_CAPACITANCE;
          case DRIED_OUT -> Group.OUTPUT_ESR;
          case WEAK_POWER_STAGE -> Group.POWER_STAGE_WEAK;
          case DEAD_PHASE -> Group.DEAD_PHASE;
          case LOSSY_POWER_STAGE -> Group.POWER_STAGE_LOSSY;
          case WARM_REFERENCE -> Group.WARM_REFERENCE;
          case FEEDBACK_LOW, FEEDBACK_HIGH -> Group.FEEDBACK;
          case OUTPUT_LEAKAGE -> Group.OUTPUT_LEAKAGE;
          case LOCK_OUT_HIGH -> Group.LOCK_OUT;
          case INPUT_DRY -> Group.INPUT_SIDE;
          case CRACKED_JOINT -> Group.JOINT;
          case HICCUPS -> Group.RESTART;
          case RINGING_LOOP, ALTERNATING -> Group.LOOP;
          case NEVER_SWITCHES -> Group.NOT_SWITCHING;
          case DEAD -> Group.NO_PATH;
          case DEAD_SHORT -> Group.OUTPUT_SHORT;
          case SHORTED_INPUT -> Group.INPUT_SHORT;
          case SLOW_START, INPUT_LEAKS -> null;
        });
  }
}
