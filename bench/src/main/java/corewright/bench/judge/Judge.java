package corewright.bench.judge;

import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a run says about the unit: input qualifier first, then limits, then the verdict. Pure. */
public final class Judge {
  private Judge() {}

  /**
   * Judges one run.
   *
   * @param run what was measured; no holds where it never came to one
   * @param profile of {@code family}; its purpose chooses the decision rule
   * @param end how the run ended; {@link RunEnd#completed} for an imported record
   * @throws IllegalArgumentException if the profile is another family's
   */
  public static Judgement judge(MeasuredRun run, Family family, Profile profile, RunEnd end) {
    return judge(run, family, profile, end, List.of());
  }

  /**
   * Judges one run on a bench that may be in doubt.
   *
   * @param reference what a reference unit on the same bench showed; see {@link ReferenceCheck}
   */
  public static Judgement judge(
      MeasuredRun run, Family family, Profile profile, RunEnd end, List<String> reference) {
    if (!profile.family().equals(family.id())) {
      throw new IllegalArgumentException(
          "profile "
              + profile.id()
              + " is for family "
              + profile.family()
              + ", not "
              + family.id()
              + ". Choose a profile of the unit's own family.");
    }
    Saw saw = see(run, family, profile, end, reference);
    VerdictTable.Row row = row(saw);
    return new Judgement(
        row.verdict(),
        Optional.of(saw.input())
            .filter(input -> !run.holds().isEmpty() && input.read())
            .map(InputCheck.Seen::qualifier)
            .filter(q -> q == Qualifier.VALID || !VerdictTable.BENCH.contains(row.id())),
        saw.rule().words(),
        saw.findings(),
        row.reasons().apply(saw));
  }

  /**
   * Every limit, but those of a step that need not be there and that the bench did not do: of what
   * only a bench reads nothing was read, and a person enters one figure of it or none. No reading
   * is two steps': a profile has one step of a kind that gives readings, and no two kinds share
   * one.
   */
  private static List<Limit> asked(MeasuredRun run, Profile profile) {
    Set<Quantity> open =
        profile.steps().stream()
            .filter(s -> !s.detail().needed())
            .filter(s -> ofStep(s).stream().noneMatch(q -> isRead(run, q) && !isByHand(s, q)))
            .flatMap(s -> ofStep(s).stream())
            .filter(q -> !isRead(run, q))
            .collect(Collectors.toSet());
    return profile.limits().stream().filter(l -> !open.contains(l.quantity())).toList();
  }

  private static boolean isRead(MeasuredRun run, Quantity quantity) {
    return run.reading(quantity).measurement().isPresent();
  }

  private static boolean isByHand(Step step, Quantity quantity) {
    return step.byHand().equals(Optional.of(quantity));
  }

  private static Set<Quantity> ofStep(Step step) {
    return Stream.concat(step.yields().stream(), step.byHand().stream())
        .collect(Collectors.toSet());
  }

  /** The first row that applies. */
  static VerdictTable.Row row(Saw saw) {
    return VerdictTable.ROWS.stream().filter(r -> r.when().test(saw)).findFirst().orElseThrow();
  }

  static Saw see(MeasuredRun run, Family family, Profile profile, RunEnd end) {
    return see(run, family, profile, end, List.of());
  }

  static Saw see(
      MeasuredRun run, Family family, Profile profile, RunEnd end, List<String> reference) {
    Plan plan = Plan.of(profile, family, run);
    InputCheck inputs = new InputCheck(family, profile, plan);
    Rule rule = Rule.of(profile.purpose());
    List<MeasuredHold> judged = run.holds().stream().filter(plan::judged).toList();
    List<Finding> findings =
        run.holds().isEmpty()
            ? List.of()
            : new LimitCheck(rule, plan).findings(run, judged, asked(run, profile));
    return new Saw(
        end,
        run.holds(),
        family,
        profile,
        plan,
        inputs,
        inputs.run(run),
        rule,
        findings,
        new BenchDoubts(family, plan).of(run.holds(), reference));
  }
}
