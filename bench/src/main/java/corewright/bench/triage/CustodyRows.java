package corewright.bench.triage;

import static corewright.bench.record.Disposition.RETURN;
import static corewright.bench.triage.Row.goes;
import static corewright.bench.triage.Row.pending;

import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Custody.Lock;
import corewright.bench.triage.Custody.Safety;
import java.util.List;

/**
 * Whose it is, whether it can hurt anybody, and what it is: before anything is said about a test.
 */
final class CustodyRows {
  private CustodyRows() {}

  static final List<Row> ALL =
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
              f -> f.whyNoPower() + "The unit is not energised before that is put right."),
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
              f -> "We cannot yet tell which build this is, and open nothing before we can."));
}
