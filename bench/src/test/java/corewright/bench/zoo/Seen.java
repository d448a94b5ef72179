package corewright.bench.zoo;

import corewright.bench.diagnose.Counting;
import corewright.bench.diagnose.Counting.Sample;
import corewright.bench.diagnose.Group;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What became of one unit of the zoo.
 *
 * @param truth the verdict of the noise-free physics
 * @param overPty the verdict over a pseudo-terminal, where it was asked for
 * @param sample for counting
 */
record Seen(
    Animal animal,
    Verdict truth,
    Verdict verdict,
    List<String> reasons,
    Optional<Group> group,
    Optional<Diagnosis> diagnosis,
    Optional<Verdict> overPty,
    Sample sample) {

  boolean bad() {
    return verdict == Verdict.FAIL || verdict == Verdict.MARGINAL || verdict == Verdict.UNSAFE;
  }

  /** Let through, or not decided, though the physics fails it. */
  boolean missed() {
    return !bad() && truth != Verdict.MARGINAL;
  }

  Optional<Candidate> named() {
    return diagnosis.flatMap(Diagnosis::named);
  }

  boolean right() {
    return named().filter(c -> isGroup(c)).isPresent();
  }

  boolean isGroup(Candidate candidate) {
    return group.filter(g -> g.name().equals(candidate.group())).isPresent();
  }

  boolean otherwiseOverPty() {
    return overPty.filter(v -> v != verdict).isPresent();
  }

  /** What is worth a look; empty where all is as it should be. */
  Optional<String> worthALook() {
    if (missed()) {
      return Optional.of(verdict + " " + animal.what() + " " + reasons);
    }
    if (otherwiseOverPty()) {
      return Optional.of("over the pty " + overPty.orElseThrow() + " of " + animal.what());
    }
    if (bad() && named().isEmpty()) {
      return Optional.of(
          "not determined "
              + truth
              + " "
              + animal.what()
              + " "
              + candidates()
              + " "
              + Counting.signs(sample)
              + " "
              + reasons);
    }
    return named().isPresent() && !right()
        ? Optional.of(
            "wrong "
                + truth
                + " "
                + animal.what()
                + " "
                + candidates()
                + " "
                + Counting.signs(sample)
                + " "
                + named().orElseThrow().evidenceFor())
        : Optional.empty();
  }

  private List<String> candidates() {
    return diagnosis.stream()
        .flatMap(d -> d.candidates().stream())
        .map(c -> c.group() + String.format(Locale.ROOT, " %.2f", c.probability()))
        .toList();
  }
}
