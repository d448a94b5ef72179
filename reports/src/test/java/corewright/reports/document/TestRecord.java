package corewright.reports.document;

import corewright.reports.ledger.Json;

/** A record that ends where the test says. */
record TestRecord(String head) implements KeptRecord {

  @Override
  public String text(Object part) {
    return Json.text(part);
  }
}
