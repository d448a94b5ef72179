package corewright.bench.triage;

import static corewright.bench.record.Disposition.REBUILD;
import static corewright.bench.record.Disposition.REPLACE;
import static corewright.bench.record.Disposition.RETURN;
import static corewright.bench.triage.Row.goes;
import static corewright.bench.triage.Row.pending;

import corewright.bench.triage.Build.Candidates;
import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Means.Parts;
import corewright.bench.triage.Means.Preventive;
import corewright.bench.triage.Proof.Coverage;
import corewright.bench.triage.Proof.Evidence;
import corewright.bench.triage.Terms.Claim;
import corewright.bench.triage.Terms.Mode;
import java.util.List;

/** What the test says: nothing, too little, all is well, or too close to call. */
final class EvidenceRows {
  private EvidenceRows() {}

  static final List<Row> ALL =
      List.of(
          pending(
              "D30",
              "bench",
              2,
              c -> c.proof().evidence() == Evidence.VOID_INPUT,
              f -> "What does it do on a stiffer supply? Repeat the test there.",
              f -> f.headline() + "The test says nothing about the unit."),
          pending(
              "D31",
              "bench",
              2,
              c -> c.proof().evidence() == Evidence.VOID_BENCH,
              f -> "What does it do when bench and fixture are proved? Repeat the test then.",
              f ->
                  f.headline() + "The bench is in doubt, so the test says nothing about the unit."),
          pending(
              "D32",
              "bench",
              2,
              c -> c.proof().evidence() == Evidence.INCOMPLETE,
              f -> "What does the whole profile show? Repeat the test to its end.",
              f -> f.headline() + "The test did not come to its end."),
          pending(
              "D33",
              "bench",
              2,
              c -> c.proof().evidence() == Evidence.NONE && c.sound(),
              f -> "What does it do under load? Test it.",
              f -> f.headline() + "The unit has not yet been tested under load."),
          pending(
              "D40",
              "bench",
              5,
              c -> c.passed() && c.proof().coverage() == Coverage.TEMPERATURE_OPEN,
              f -> "Does it also pass at the temperature that the complaint names?",
              f -> "The unit passed at room temperature; the complaint asks for cold or heat."),
          pending(
              "D41",
              "bench",
              5,
              c -> c.passed() && c.proof().coverage() == Coverage.SOAK_OPEN,
              f -> "Does it pass 24 hours, and taps and wiggles?",
              f -> "The unit passed; the complaint is intermittent and asks for a long soak."),
          goes(
              "D42",
              REBUILD,
              "queue",
              EvidenceRows::preventive,
              f -> "The unit met every limit and is rebuilt as a precaution, as agreed."),
          pending(
              "D43",
              "customer",
              30,
              c -> c.passed() && c.again() && !c.ours() && !c.approved() && !c.declined(),
              f -> "Do you accept an exchange unit, so that we can keep this one for a long test?",
              f -> "The unit met every limit for the second time; we offer to exchange it."),
          goes(
              "D44",
              REPLACE,
              "exchange",
              c -> c.passed() && c.again() && !c.declined(),
              f -> "The unit met every limit for the second time and is exchanged as goodwill."),
          goes(
              "D45",
              RETURN,
              "customer",
              c -> c.passed() && c.terms().claim() != Claim.NONE,
              f ->
                  "The returned unit met every limit; it goes back with its curves and three"
                      + " checks."),
          goes(
              "D46",
              RETURN,
              "customer",
              c -> c.passed() && !c.ours(),
              f -> "The unit met every limit; it goes back with its curves and three checks."),
          goes(
              "D47",
              RETURN,
              "stock",
              Case::passed,
              f -> "The core met every limit and goes to stock as tested."),
          pending(
              "D50",
              "bench",
              5,
              c -> c.proof().evidence() == Evidence.MARGINAL,
              f -> "Is it marginal again, in five runs on another bench?",
              f -> f.headline() + "It neither passes nor fails; the test is repeated."),
          pending(
              "D55",
              "receiving",
              3,
              c ->
                  c.build().identity() == Identity.PROBABLE
                      && c.build().candidates() == Candidates.DIFFER,
              f ->
                  f.identityQuestion().isEmpty()
                      ? "Which build is it? Show it to a second person."
                      : f.identityQuestion(),
              f ->
                  f.headline()
                      + "Whether it can be rebuilt depends on the build, which is not yet sure."));

  private static boolean preventive(Case c) {
    return c.passed()
        && c.means().preventive() == Preventive.WANTED
        && c.terms().claim() == Claim.NONE
        && c.build().identity() == Identity.IDENTIFIED
        && c.build().rebuildable().open()
        && c.sound()
        && c.means().parts() == Parts.IN_STOCK
        && c.rebuildPays()
        && (c.ours() || (c.approved() && c.terms().mode() == Mode.REPAIR));
  }
}
