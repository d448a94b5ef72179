package corewright.station.web.place;

import corewright.reports.ledger.Agreements.Agreement;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Ledger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What the shop has promised and may not keep: offers about to run out, deposits owed too long. */
final class Promises {
  /** Long enough to ring somebody. Common practice, no source. */
  private static final int NEAR_DAYS = 2;

  private Promises() {}

  static List<Today.Need> atRisk(Ledger ledger, LocalDate today) {
    String near = today.plusDays(NEAR_DAYS).toString();
    List<Today.Need> needs = new ArrayList<>();
    for (Agreement a : ledger.agreements().expected()) {
      if (a.state().equals("quoted") && a.until().compareTo(near) <= 0) {
        needs.add(
            new Today.Need(
                "Ring the customer",
                a.number(),
                "/counter",
                a.customer() + " has not answered: " + a.price() + " for a " + a.family() + ".",
                DayWords.due(a.until(), today),
                "counter"));
      }
    }
    for (Deposit d : ledger.deposits().outstanding()) {
      if (d.due().compareTo(today.toString()) < 0) {
        needs.add(
            new Today.Need(
                "Settle the deposit",
                d.number(),
                "/shop",
                d.amount() + " of " + d.customer() + ": the core's window is over.",
                DayWords.due(d.due(), today),
                "counter"));
      }
    }
    return needs;
  }
}
