package corewright.bench.triage;

import static corewright.bench.record.Disposition.REBUILD;
import static corewright.bench.record.Disposition.REPLACE;
import static corewright.bench.record.Disposition.RETURN;
import static corewright.bench.triage.Row.goes;
import static corewright.bench.triage.Row.pending;

import corewright.bench.triage.Build.Rebuildable;
import corewright.bench.triage.Means.Economy;
import corewright.bench.triage.Means.NextTest;
import corewright.bench.triage.Means.Parts;
import corewright.bench.triage.Proof.Evidence;
import java.util.List;

/** It failed and may be rebuilt: whether the workshop can, and whether it pays. */
final class WorkshopRows {
  private WorkshopRows() {}

  static final List<Row> ALL =
      List.of(
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
              c -> c.bad() && !c.ours() && !c.approved(),
              f -> "Do you approve the quote?",
              f -> f.headline() + "Its construction can be rebuilt; the quote is sent."),
          pending(
              "D78",
              "bench",
              2,
              c -> c.bad() && c.means().nextTest() == NextTest.WORTH,
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
              c -> c.ready() && c.proof().evidence() == Evidence.UNSAFE,
              f ->
                  f.headline()
                      + "It can be rebuilt, and is not energised before the cause is found."),
          goes(
              "D81",
              REBUILD,
              "queue",
              c -> c.ready() && c.proof().evidence() == Evidence.FAIL,
              f -> f.headline() + "Its construction can be rebuilt."),
          goes(
              "D82",
              REBUILD,
              "queue",
              c -> c.ready() && c.proof().evidence() == Evidence.MARGINAL_CONFIRMED,
              f ->
                  f.headline()
                      + "It is marginal, repeatedly, and its construction can be rebuilt."),
          goes(
              "D83",
              REPLACE,
              "exchange",
              c ->
                  c.bad()
                      && c.rebuildPays()
                      && c.means().parts() == Parts.EXCHANGE_AGREED
                      && !c.ours(),
              f -> f.headline() + "Parts for a rebuild are missing; an exchange unit was agreed."),
          pending(
              "D84",
              "stores",
              10,
              c -> c.bad() && c.rebuildPays(),
              f -> "When are the parts of the kit here?",
              f -> f.headline() + "It can be rebuilt as soon as the parts are here."),
          goes(
              "D86",
              REPLACE,
              "harvest",
              c -> c.bad() && c.ours(),
              f -> f.headline() + "A rebuild would not pay; the core is used for parts."),
          goes(
              "D87",
              REPLACE,
              "exchange",
              c -> c.bad() && c.means().economy() == Economy.REPLACE_PAYS,
              f -> f.headline() + "A rebuild would not pay; an exchange unit does."),
          goes(
              "D88",
              RETURN,
              "customer",
              Case::bad,
              f -> f.headline() + "Neither a rebuild nor an exchange would be worth its price."),
          pending(
              "D99",
              "owner",
              5,
              c -> true,
              f -> "What shall become of it? No row of the table applies.",
              f -> "This unit is looked at by the owner."));
}
