package corewright.bench.triage;

import corewright.bench.identify.Identifier;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Identification;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.Verdict;
import corewright.bench.triage.Build.Candidates;
import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Build.Rebuildable;
import corewright.bench.triage.Proof.Coverage;
import corewright.bench.triage.Proof.Evidence;
import corewright.measures.Chance;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was found, in the words of the decision table. */
public final class Cases {
  private Cases() {}

  /** Where the fault lies in a build that can be rebuilt in part. */
  public enum FaultPlace {
    INSIDE,
    OUTSIDE,
    UNKNOWN
  }

  /** A core that a person found to be none of the shop's kind. */
  public static Build foreign() {
    return new Build(Identity.FOREIGN, Candidates.AGREE, Rebuildable.NO);
  }

  /** The build as identified. */
  public static Build build(Family family, Identification identification, FaultPlace place) {
    return new Build(
        switch (identification.band()) {
          case IDENTIFIED -> Identity.IDENTIFIED;
          case PROBABLE -> Identity.PROBABLE;
          case UNCERTAIN -> Identity.UNCERTAIN;
        },
        Identifier.candidatesDiffer(family, identification) ? Candidates.DIFFER : Candidates.AGREE,
        rebuildable(variant(family, identification), place));
  }

  /**
   * What is known of how it works.
   *
   * @param judgement of the last run; empty if there was none
   * @param again whether a marginal verdict was confirmed by five runs on another bench
   */
  public static Proof proof(Optional<Judgement> judgement, boolean again, Coverage coverage) {
    return new Proof(judgement.map(j -> evidence(j, again)).orElse(Evidence.NONE), coverage);
  }

  /** A core that nobody has identified yet. */
  public static Build unidentified() {
    return new Build(Identity.UNCERTAIN, Candidates.DIFFER, Rebuildable.FAULT_UNKNOWN);
  }

  /** What the decision shall quote of a unit that was not tested. */
  public static Facts facts(
      Family family,
      Optional<Identification> identification,
      Optional<Judgement> judgement,
      Optional<Sums> sums) {
    return facts(family, identification, judgement, "", Optional.empty(), sums);
  }

  /**
   * What the decision shall quote.
   *
   * @param finding what the customer can be told of the test
   */
  public static Facts facts(
      Family family,
      Optional<Identification> identification,
      Optional<Judgement> judgement,
      String finding,
      Optional<Diagnosis> diagnosis,
      Optional<Sums> sums) {
    return new Facts(
        "",
        judgement.map(Judgement::reasons).orElse(List.of()),
        identification.map(i -> words(family, i)).orElse(List.of()),
        identification.map(Identification::nextQuestion).orElse(""),
        identification.map(i -> variant(family, i).why()).orElse(""),
        finding,
        diagnosis,
        sums.map(Sums::sentences).orElse(List.of()));
  }

  private static Evidence evidence(Judgement judgement, boolean again) {
    Optional<Verdict> verdict = judgement.verdict();
    if (verdict.isEmpty()) {
      return Evidence.NONE; // at rest, or no family says what is good
    }
    return switch (verdict.get()) {
      case PASS -> Evidence.PASS;
      case MARGINAL -> again ? Evidence.MARGINAL_CONFIRMED : Evidence.MARGINAL;
      case FAIL -> Evidence.FAIL;
      case UNSAFE -> Evidence.UNSAFE;
      case INCOMPLETE -> Evidence.INCOMPLETE;
      case VOID ->
          judgement.qualifier().filter(q -> q != Qualifier.VALID).isPresent()
              ? Evidence.VOID_INPUT
              : Evidence.VOID_BENCH;
    };
  }

  private static Rebuildable rebuildable(Variant variant, FaultPlace place) {
    return switch (variant.serviceable()) {
      case YES -> Rebuildable.YES;
      case NO -> Rebuildable.NO;
      case CONDITIONAL ->
          switch (place) {
            case INSIDE -> Rebuildable.FAULT_INSIDE;
            case OUTSIDE -> Rebuildable.FAULT_OUTSIDE;
            case UNKNOWN -> Rebuildable.FAULT_UNKNOWN;
          };
    };
  }

  private static List<String> words(Family family, Identification identification) {
    List<String> words = new ArrayList<>();
    words.add(
        "Build "
            + identification.variant()
            + " ("
            + variant(family, identification).title()
            + "), probability "
            + Chance.words(identification.posterior())
            + ".");
    words.addAll(identification.conflicts());
    return List.copyOf(words);
  }

  private static Variant variant(Family family, Identification identification) {
    return family
        .variant(identification.variant())
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "family "
                        + family.id()
                        + " has no variant "
                        + identification.variant()
                        + ". Identify the unit with this family's key."));
  }
}
