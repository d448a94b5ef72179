package corewright.bench.triage;

import static corewright.bench.record.Disposition.REPLACE;
import static corewright.bench.record.Disposition.RETURN;
import static corewright.bench.triage.Row.goes;
import static corewright.bench.triage.Row.pending;

import corewright.bench.triage.Means.Economy;
import corewright.bench.triage.Terms.Approval;
import corewright.bench.triage.Terms.Cause;
import corewright.bench.triage.Terms.Data;
import corewright.bench.triage.Terms.Mode;
import java.util.List;

/** It failed: what its owner said, and what becomes of what cannot or need not be rebuilt. */
final class CustomerRows {
  private CustomerRows() {}

  static final List<Row> ALL =
      List.of(
          goes(
              "D57",
              RETURN,
              "customer",
              c -> !c.ours() && c.declined(),
              f -> f.headline() + "The quote was declined; the unit goes back as it came."),
          pending(
              "D58",
              "owner",
              60,
              c -> !c.ours() && c.terms().approval() == Approval.SILENT,
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
              c -> c.closed() && c.ours(),
              f -> f.headline() + f.whyNoRebuild() + "The core is used for parts."),
          goes(
              "D61",
              RETURN,
              "customer",
              c -> c.closed() && c.means().economy() == Economy.NEITHER_PAYS,
              f ->
                  f.headline()
                      + f.whyNoRebuild()
                      + "A replacement would cost more than it is worth."),
          pending(
              "D62",
              "customer",
              30,
              c -> c.closed() && c.terms().data() == Data.PAIRED && !c.approved(),
              f ->
                  "Shall an exchange unit take over your vehicle's data through a licensed person,"
                      + " or shall we send yours back?",
              f ->
                  f.headline()
                      + f.whyNoRebuild()
                      + "It holds data of your vehicle and is never swapped silently."),
          pending(
              "D63",
              "customer",
              30,
              c -> c.closed() && !c.approved(),
              f -> "Do you accept an exchange unit at the price quoted?",
              f -> f.headline() + f.whyNoRebuild() + "Your unit remains yours until you agree."),
          pending(
              "D66",
              "customer",
              30,
              c -> c.terms().cause() == Cause.UNCORRECTED && !c.ours(),
              f -> "Is the cause outside the unit mended, and who confirms it?",
              f ->
                  f.headline()
                      + "The damage came from outside; it would do the same to the next unit."),
          goes(
              "D67",
              REPLACE,
              "exchange",
              Case::closed,
              f -> f.headline() + f.whyNoRebuild() + "It is replaced by an exchange unit."),
          pending(
              "D68",
              "customer",
              30,
              c -> !c.sound() && !c.rebuildPays() && !c.ours() && !c.approved(),
              f -> "Do you want an exchange unit, or yours back as it is?",
              f -> "The unit is damaged beyond a rebuild that pays."),
          goes(
              "D69",
              REPLACE,
              "exchange",
              c -> !c.sound() && !c.rebuildPays() && !c.ours(),
              f -> "The unit is damaged beyond a rebuild that pays; an exchange unit was agreed."),
          goes(
              "D70",
              REPLACE,
              "scrap",
              c -> !c.sound() && !c.rebuildPays(),
              f -> "The core is damaged beyond a rebuild that pays."));
}
