package corewright.station.work;

import corewright.reports.document.KeptRecord;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Json;
import corewright.reports.ledger.Ledger;

/** The ledger, as documents see it. */
record RecordOfShop(Ledger ledger) implements KeptRecord {

  @Override
  public String head() {
    return ledger.head().map(Head::printed).orElse("");
  }

  @Override
  public String text(Object part) {
    return Json.text(part);
  }
}
