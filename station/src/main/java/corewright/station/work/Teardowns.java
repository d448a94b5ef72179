package corewright.station.work;

import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.reports.ledger.Facts.Confirmed;
import corewright.reports.ledger.Ledger;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the shop found on opening: noted beside what was expected, and counted for the next unit.
 */
public final class Teardowns {
  private final Ledger ledger;

  Teardowns(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * Notes what was at fault. A group of the diagnosis is kept by its id, and counts from now on.
   *
   * @param predicted what was expected from outside; empty: what the last decision named
   * @return the group that it counts for; empty where it is none of the diagnosis
   */
  public Optional<Group> confirm(String tag, String fault, String predicted, String who) {
    Optional<Group> group = Group.of(fault);
    String expected = predicted.isBlank() ? named(tag) : id(predicted);
    ledger.facts().confirm(tag, id(fault), expected, who);
    return group;
  }

  private static String id(String words) {
    return Group.of(words).map(Group::name).orElse(words);
  }

  private String named(String tag) {
    return ledger
        .dossier(tag)
        .decision()
        .flatMap(Decision::diagnosis)
        .flatMap(Diagnosis::named)
        .map(Candidate::group)
        .orElse("");
  }

  /** How often each group is at fault here, for a unit whose own teardown says nothing of it. */
  Priors priors(String tag) {
    return priors(ledger.facts().confirmed(), tag);
  }

  static Priors priors(List<Confirmed> confirmed, String tag) {
    Map<Group, Integer> found = new EnumMap<>(Group.class);
    confirmed.stream()
        .filter(c -> !c.tag().equals(tag))
        .flatMap(c -> Group.of(c.fault()).stream())
        .forEach(g -> found.merge(g, 1, Integer::sum));
    return Priors.ofTeardowns(found);
  }
}
