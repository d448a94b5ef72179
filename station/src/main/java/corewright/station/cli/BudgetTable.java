package corewright.station.cli;

import corewright.measures.HoldBudget;
import corewright.measures.meter.RunMeter;
import corewright.measures.uncertainty.BudgetText;
import corewright.station.work.MeasureFile.Result;
import java.io.PrintWriter;
import java.util.List;

/** What the uncertainty of every level and droop is made of, hold by hold. */
final class BudgetTable {
  private static final double LEVEL = 0.95;

  private BudgetTable() {}

  static void print(Result result, PrintWriter out) {
    List<HoldBudget> budgets = RunMeter.budgets(result.recording().capture(), result.settings());
    for (HoldBudget each : budgets) {
      out.println();
      out.println("Budget of " + each.quantity().title() + ", hold " + (each.hold() + 1));
      BudgetText.lines(each.budget(), LEVEL).forEach(line -> out.println("  " + line));
    }
  }
}
