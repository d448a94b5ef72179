package corewright.bench.triage;

import static corewright.bench.record.Disposition.REBUILD;
import static corewright.bench.record.Disposition.REPLACE;
import static corewright.bench.record.Disposition.RETURN;
import static corewright.bench.triage.Row.goes;
import static corewright.bench.triage.Row.pending;

import corewright.bench.triage.Build.Candidates;
import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Build.Rebuildable;
import corewright.bench.triage.Custody.Condition;
import corewright.bench.triage.Custody.Lock;
import corewright.bench.triage.Custody.Safety;
import corewright.bench.triage.Means.Economy;
import corewright.bench.triage.Means.NextTest;
import corewright.bench.triage.Means.Parts;
import corewright.bench.triage.Means.Preventive;
import corewright.bench.triage.Proof.Coverage;
import corewright.bench.triage.Proof.Evidence;
import corewright.bench.triage.Terms.Approval;
import corewright.bench.triage.Terms.Cause;
import corewright.bench.triage.Terms.Claim;
import corewright.bench.triage.Terms.Data;
import corewright.bench.triage.Terms.Mode;
import java.util.List;

/**
 * Rebuild, replace or return: read from the top, the first row that applies decides. Custody first,
 * then identity, then evidence, then what the customer said, then what can be done, then money.
 * Days and order are the trade's judgement, not a standard's.
 */
final class DecisionTable {
  /** Counts up with every change of a row. */
  static final int REVISION = 3;

  private DecisionTable() {}

  static final List<Row> ROWS =
      List.of(
          pending(
              "D10",
              "owner",
              14,
              c -> c.custody().lock() == Lock.DISPUTED,
              f -> "Whose is it, and may it be handed out?",
              f -> "The unit is kept until its ownership is cleared."),
          pending(
              "D11",
              "bench",
              1,
              c -> c.custody().safety() == Safety.CHARGED,
              f -> "Is it under its safe voltage, and still so ten seconds later?",
              f -> "The unit is kept until its stored charge is proved to be gone."),
          pending(
              "D12",
              "bench",
              2,
              c -> c.custody().safety() == Safety.WET,
              f -> "Is it dry: dried for a day, and weighed before and after?",
              f -> "The unit is wet and is dried before it is tested."),
          pending(
              "D13",
              "bench",
              2,
              c -> c.custody().safety() == Safety.FORBIDDEN,
              f -> "Is what forbids power put right, and the checklist answered again?",
              f -> obstacle(f) + "The unit is not energised before that is put right."),
          goes(
              "D15",
              RETURN,
              "customer",
              c -> c.build().identity() == Identity.FOREIGN && !c.proof().evidence().isVoid(),
              f -> "What arrived is not a core of this kind; it goes back as it came."),
          pending(
              "D20",
              "receiving",
              3,
              c -> c.build().identity() == Identity.UNCERTAIN,
              f ->
                  f.identityQuestion().isEmpty()
                      ? "Which build is it? Everything outside was looked at: show it to a second"
                          + " person."
                      : f.identityQuestion(),
              f -> "We cannot yet tell which build this is, and open nothing before we can."),
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
              c -> c.proof().evidence() == Evidence.NONE && sound(c),
              f -> "What does it do under load? Test it.",
              f -> f.headline() + "The unit has not yet been tested under load."),
          pending(
              "D40",
              "bench",
              5,
              c -> pass(c) && c.proof().coverage() == Coverage.TEMPERATURE_OPEN,
              f -> "Does it also pass at the temperature that the complaint names?",
              f -> "The unit passed at room temperature; the complaint asks for cold or heat."),
          pending(
              "D41",
              "bench",
              5,
              c -> pass(c) && c.proof().coverage() == Coverage.SOAK_OPEN,
              f -> "Does it pass 24 hours, and taps and wiggles?",
              f -> "The unit passed; the complaint is intermittent and asks for a long soak."),
          goes(
              "D42",
              REBUILD,
              "queue",
              DecisionTable::preventive,
              f -> "The unit met every limit and is rebuilt as a precaution, as agreed."),
          pending(
              "D43",
              "customer",
              30,
              c -> pass(c) && again(c) && !ours(c) && !approved(c) && !declined(c),
              f -> "Do you accept an exchange unit, so that we can keep this one for a long test?",
              f -> "The unit met every limit for the second time; we offer to exchange it."),
          goes(
              "D44",
              REPLACE,
              "exchange",
              c -> pass(c) && again(c) && !declined(c),
              f -> "The unit met every limit for the second time and is exchanged as goodwill."),
          goes(
              "D45",
              RETURN,
              "customer",
              c -> pass(c) && c.terms().claim() != Claim.NONE,
              f ->
                  "The returned unit met every limit; it goes back with its curves and three"
                      + " checks."),
          goes(
              "D46",
              RETURN,
              "customer",
              c -> pass(c) && !ours(c),
              f -> "The unit met every limit; it goes back with its curves and three checks."),
          goes(
              "D47",
              RETURN,
              "stock",
              DecisionTable::pass,
              f -> "The core met every limit and goes to stock as tested."),
          pending(
              "D50",
              "bench",
              5,
              c -> c.proof().evidence() == Evidence.MARGINAL,
              f -> "Is it marginal again, in five runs on another bench?",
              f -> f.headline() + "That is too close to call; the test is repeated."),
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
                      + "Whether it can be rebuilt depends on the build, which is not yet sure."),
          goes(
              "D57",
              RETURN,
              "customer",
              c -> !ours(c) && declined(c),
              f -> f.headline() + "The quote was declined; the unit goes back as it came."),
          pending(
              "D58",
              "owner",
              60,
              c -> !ours(c) && c.terms().approval() == Approval.SILENT,
              f -> "Has the customer answered the last notice?",
              f -> "The quote was not answered; the unit is kept and notices are sent."),
          goes(
              "D59",
              RETURN,
              "customer",
              c -> c.terms().mode() == Mode.TEST_ONLY,
              f ->
                  f.headline()
                      + "A test was ordered, no rebuild; the unit goes back with its report."),
          goes(
              "D60",
              REPLACE,
              "harvest",
              c -> closed(c) && ours(c),
              f -> f.headline() + because(f) + "The core is used for parts."),
          goes(
              "D61",
              RETURN,
              "customer",
              c -> closed(c) && c.means().economy() == Economy.NEITHER_PAYS,
              f -> f.headline() + because(f) + "A replacement would cost more than it is worth."),
          pending(
              "D62",
              "customer",
              30,
              c -> closed(c) && c.terms().data() == Data.PAIRED && !approved(c),
              f ->
                  "Shall an exchange unit take over your vehicle's data through a licensed person,"
                      + " or shall we send yours back?",
              f ->
                  f.headline()
                      + because(f)
                      + "It holds data of your vehicle and is never swapped silently."),
          pending(
              "D63",
              "customer",
              30,
              c -> closed(c) && !approved(c),
              f -> "Do you accept an exchange unit at the price quoted?",
              f -> f.headline() + because(f) + "Your unit remains yours until you agree."),
          pending(
              "D66",
              "customer",
              30,
              c -> c.terms().cause() == Cause.UNCORRECTED && !ours(c),
              f -> "Is the cause outside the unit mended, and who confirms it?",
              f ->
                  f.headline()
                      + "The damage came from outside; it would do the same to the next unit."),
          goes(
              "D67",
              REPLACE,
              "exchange",
              DecisionTable::closed,
              f -> f.headline() + because(f) + "It is replaced by an exchange unit."),
          pending(
              "D68",
              "customer",
              30,
              c -> !sound(c) && !rebuildPays(c) && !ours(c) && !approved(c),
              f -> "Do you want an exchange unit, or yours back as it is?",
              f -> "The unit is damaged beyond a rebuild that pays."),
          goes(
              "D69",
              REPLACE,
              "exchange",
              c -> !sound(c) && !rebuildPays(c) && !ours(c),
              f -> "The unit is damaged beyond a rebuild that pays; an exchange unit was agreed."),
          goes(
              "D70",
              REPLACE,
              "scrap",
              c -> !sound(c) && !rebuildPays(c),
              f -> "The core is damaged beyond a rebuild that pays."),
          pending(
              "D74",
              "engineer",
              5,
              c -> c.build().rebuildable() == Rebuildable.FAULT_UNKNOWN,
              f ->
                  "Does the fault lie in the part that can be rebuilt? "
                      + (f.measurement().isEmpty()
                          ? "One more measurement that separates the groups."
                          : f.measurement()),
              f ->
                  f.headline()
                      + "This build can be rebuilt in part only; where the fault lies is open."),
          pending(
              "D76",
              "customer",
              30,
              c -> bad(c) && !ours(c) && !approved(c),
              f -> "Do you approve the quote?",
              f -> f.headline() + "Its construction can be rebuilt; the quote is sent."),
          pending(
              "D78",
              "bench",
              2,
              c -> bad(c) && c.means().nextTest() == NextTest.WORTH,
              f ->
                  "Which group of parts is at fault? "
                      + (f.measurement().isEmpty()
                          ? "One more measurement that separates the groups."
                          : f.measurement()),
              f ->
                  f.headline()
                      + "One more measurement is worth more than it costs before we open it."),
          goes(
              "D80",
              REBUILD,
              "queue",
              c -> ready(c) && c.proof().evidence() == Evidence.UNSAFE,
              f ->
                  f.headline()
                      + "It can be rebuilt, and is not energised before the cause is found."),
          goes(
              "D81",
              REBUILD,
              "queue",
              c -> ready(c) && c.proof().evidence() == Evidence.FAIL,
              f -> f.headline() + "Its construction can be rebuilt."),
          goes(
              "D82",
              REBUILD,
              "queue",
              c -> ready(c) && c.proof().evidence() == Evidence.MARGINAL_CONFIRMED,
              f ->
                  f.headline()
                      + "It is marginal, repeatedly, and its construction can be rebuilt."),
          goes(
              "D83",
              REPLACE,
              "exchange",
              c ->
                  bad(c)
                      && rebuildPays(c)
                      && c.means().parts() == Parts.EXCHANGE_AGREED
                      && !ours(c),
              f -> f.headline() + "Parts for a rebuild are missing; an exchange unit was agreed."),
          pending(
              "D84",
              "stores",
              10,
              c -> bad(c) && rebuildPays(c),
              f -> "When are the parts of the kit here?",
              f -> f.headline() + "It can be rebuilt as soon as the parts are here."),
          goes(
              "D86",
              REPLACE,
              "harvest",
              c -> bad(c) && ours(c),
              f -> f.headline() + "A rebuild would not pay; the core is used for parts."),
          goes(
              "D87",
              REPLACE,
              "exchange",
              c -> bad(c) && c.means().economy() == Economy.REPLACE_PAYS,
              f -> f.headline() + "A rebuild would not pay; an exchange unit does."),
          goes(
              "D88",
              RETURN,
              "customer",
              DecisionTable::bad,
              f -> f.headline() + "Neither a rebuild nor an exchange would be worth its price."),
          pending(
              "D99",
              "owner",
              5,
              c -> true,
              f -> "What shall become of it? No row of the table applies.",
              f -> "This unit is looked at by the owner."));

  private static boolean preventive(Case c) {
    return pass(c)
        && c.means().preventive() == Preventive.WANTED
        && c.terms().claim() == Claim.NONE
        && c.build().identity() == Identity.IDENTIFIED
        && c.build().rebuildable().open()
        && sound(c)
        && c.means().parts() == Parts.IN_STOCK
        && rebuildPays(c)
        && (ours(c) || (approved(c) && c.terms().mode() == Mode.REPAIR));
  }

  /** Everything that a rebuild needs. */
  private static boolean ready(Case c) {
    return rebuildPays(c) && c.means().parts() == Parts.IN_STOCK && c.build().rebuildable().open();
  }

  private static boolean pass(Case c) {
    return c.proof().evidence() == Evidence.PASS;
  }

  private static boolean bad(Case c) {
    return c.proof().evidence().bad();
  }

  private static boolean closed(Case c) {
    return c.build().rebuildable().closed();
  }

  private static boolean sound(Case c) {
    return c.custody().condition() == Condition.SOUND;
  }

  private static boolean rebuildPays(Case c) {
    return c.means().economy() == Economy.REBUILD_PAYS;
  }

  private static boolean ours(Case c) {
    return c.terms().ours();
  }

  private static boolean again(Case c) {
    return c.terms().claim() == Claim.REPEATED;
  }

  private static boolean approved(Case c) {
    return c.terms().approval() == Approval.APPROVED;
  }

  private static boolean declined(Case c) {
    return c.terms().approval() == Approval.DECLINED;
  }

  private static String obstacle(Facts f) {
    return f.obstacle().isEmpty()
        ? "The checklist has an answer that forbids power. "
        : "The checklist says " + f.obstacle() + ". ";
  }

  private static String because(Facts f) {
    return f.build().isEmpty()
        ? "This build cannot be rebuilt. "
        : "This build cannot be rebuilt: " + f.build() + ". ";
  }
}
