package corewright.bench.triage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Disposition;
import corewright.bench.triage.Build.Candidates;
import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Build.Rebuildable;
import corewright.bench.triage.Custody.Condition;
import corewright.bench.triage.Custody.Lock;
import corewright.bench.triage.Custody.Safety;
import corewright.bench.triage.Proof.Evidence;
import corewright.bench.triage.Terms.Approval;
import corewright.bench.triage.Terms.Data;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.junit.jupiter.api.Test;

/** The decision table, tried on every combination of its inputs. Common practice, no source. */
class DecisionSpaceTest {

  /** What must hold for every case and the row that decides it. */
  private static final Map<String, BiPredicate<Case, Row>> LAWS = new LinkedHashMap<>();

  static {
    LAWS.put(
        "the last row is for a damaged, untested core that the sums would rebuild, alone",
        (c, r) -> !r.id().equals("D99") || leftOver(c));
    LAWS.put(
        "a pass is rebuilt by the preventive row alone",
        (c, r) -> evidence(c) != Evidence.PASS || !rebuilt(r) || r.id().equals("D42"));
    LAWS.put("void never disposes", (c, r) -> !evidence(c).isVoid() || pending(r));
    LAWS.put(
        "an uncertain identity never disposes",
        (c, r) -> c.build().identity() != Identity.UNCERTAIN || pending(r));
    LAWS.put(
        "a charged unit never leaves",
        (c, r) -> c.custody().safety() != Safety.CHARGED || pending(r));
    LAWS.put("a wet unit never leaves", (c, r) -> c.custody().safety() != Safety.WET || pending(r));
    LAWS.put(
        "a unit that must not be energised never leaves",
        (c, r) -> c.custody().safety() != Safety.FORBIDDEN || pending(r));
    LAWS.put(
        "a disputed unit never leaves",
        (c, r) -> c.custody().lock() != Lock.DISPUTED || pending(r));
    LAWS.put(
        "one marginal or unfinished run, or none, never disposes of a sound core of ours",
        (c, r) -> !unfinished(c) || pending(r) || c.build().identity() == Identity.FOREIGN);
    LAWS.put(
        "what cannot be rebuilt never is",
        (c, r) -> !c.build().rebuildable().closed() || !rebuilt(r));
    LAWS.put(
        "nothing is opened before the build is sure enough",
        (c, r) ->
            !rebuilt(r)
                || c.build().identity() == Identity.IDENTIFIED
                || (c.build().identity() == Identity.PROBABLE
                    && c.build().candidates() == Candidates.AGREE));
    LAWS.put(
        "where the fault lies is known before a part rebuild",
        (c, r) -> !rebuilt(r) || c.build().rebuildable() != Rebuildable.FAULT_UNKNOWN);
    LAWS.put(
        "a customer's unit is neither rebuilt nor replaced without approval",
        (c, r) ->
            c.terms().ours()
                || c.terms().approval() == Approval.APPROVED
                || !(rebuilt(r) || r.disposition() == Disposition.REPLACE));
    LAWS.put(
        "paired data are never swapped silently",
        (c, r) ->
            c.terms().data() != Data.PAIRED
                || c.terms().ours()
                || c.terms().approval() == Approval.APPROVED
                || r.disposition() != Disposition.REPLACE);
    LAWS.put(
        "a test-only job is never rebuilt",
        (c, r) -> c.terms().mode() != Terms.Mode.TEST_ONLY || !rebuilt(r));
    LAWS.put(
        "a rebuild pays, and its parts are there",
        (c, r) ->
            !rebuilt(r)
                || (c.means().economy() == Means.Economy.REBUILD_PAYS
                    && c.means().parts() == Means.Parts.IN_STOCK));
    LAWS.put(
        "the shop's own core goes to no customer, unless it was none of its kind",
        (c, r) -> !c.terms().ours() || !r.destination().equals("customer") || r.id().equals("D15"));
    LAWS.put(
        "a customer's unit is not taken for parts, scrap or stock",
        (c, r) ->
            c.terms().ours() || !Set.of("harvest", "scrap", "stock").contains(r.destination()));
  }

  @Test
  void everyCombinationKeepsTheLaws() {
    List<Tried> all =
        Space.CUSTODIES.parallelStream()
            .flatMap(custody -> Space.BUILDS.stream().map(build -> tried(custody, build)))
            .toList();
    Map<String, Case> broken = new LinkedHashMap<>();
    Set<String> used = new LinkedHashSet<>();
    all.forEach(
        tried -> {
          broken.putAll(tried.broken());
          used.addAll(tried.used());
        });
    assertEquals(Map.of(), broken);
    assertEquals(
        2 * 4 * 2 * 4 * 2 * 5 * 9 * 3 * 4 * 3 * 2 * 2 * 4 * 3 * 2 * 3 * 2L,
        all.stream().mapToLong(Tried::cases).sum());
    assertEquals(DecisionTable.ROWS.size(), used.size(), "rows used: " + used);
  }

  private record Tried(long cases, Set<String> used, Map<String, Case> broken) {}

  /** Plain loops: there are ninety million cases. */
  private static Tried tried(Custody custody, Build build) {
    long cases = 0;
    Set<String> used = new HashSet<>();
    Map<String, Case> broken = new LinkedHashMap<>();
    List<Map.Entry<String, BiPredicate<Case, Row>>> laws = List.copyOf(LAWS.entrySet());
    for (Proof proof : Space.PROOFS) {
      for (Terms terms : Space.TERMS) {
        for (Means means : Space.MEANS) {
          Case c = new Case(custody, build, proof, terms, means);
          Row row = Triage.row(c);
          cases++;
          used.add(row.id());
          for (Map.Entry<String, BiPredicate<Case, Row>> law : laws) {
            if (!law.getValue().test(c, row)) {
              broken.putIfAbsent(law.getKey() + " (" + row.id() + ")", c);
            }
          }
        }
      }
    }
    return new Tried(cases, used, broken);
  }

  @Test
  void theLawsAreAwake() {
    Case pass = Space.plainBut("Evidence=PASS Safety=CHARGED Mode=TEST_ONLY");
    Row wrong = row("D81");
    assertEquals(
        3,
        LAWS.values().stream().filter(law -> !law.test(pass, wrong)).count(),
        "pass, charged, test");
    assertTrue(
        LAWS.values().stream().anyMatch(law -> !law.test(Space.PLAIN, row("D99"))), "last row");
  }

  private static Row row(String id) {
    return DecisionTable.ROWS.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static boolean leftOver(Case c) {
    return evidence(c) == Evidence.NONE
        && c.custody().condition() == Condition.DAMAGED
        && c.means().economy() == Means.Economy.REBUILD_PAYS
        && c.build().rebuildable().open();
  }

  private static boolean unfinished(Case c) {
    return evidence(c) == Evidence.MARGINAL
        || evidence(c) == Evidence.INCOMPLETE
        || (evidence(c) == Evidence.NONE && c.custody().condition() == Condition.SOUND);
  }

  private static Evidence evidence(Case c) {
    return c.proof().evidence();
  }

  private static boolean rebuilt(Row row) {
    return row.disposition() == Disposition.REBUILD;
  }

  private static boolean pending(Row row) {
    return row.disposition() == Disposition.PENDING;
  }
}
