package corewright.reports.ledger;

/**
 * What can happen to a unit. Adding one: a constant here, its method in {@link Ledger}, its case in
 * {@link Views} and, if documents show it, in {@link Dossiers}. The {@link #id} is in every event
 * and never changes.
 */
enum EventKind {
  RECEIVED("received"),
  ANSWERED("answered"),
  IDENTIFIED("identified"),
  RUN_BEGUN("run begun"),
  RUN_ENDED("run ended"),
  DECIDED("decided"),
  REBUILT("rebuilt"),
  DOCUMENTED("documented"),
  AMENDED("amended");

  private final String id;

  EventKind(String id) {
    this.id = id;
  }

  String id() {
    return id;
  }

  static EventKind of(String id) {
    for (EventKind kind : values()) {
      if (kind.id.equals(id)) {
        return kind;
      }
    }
    throw new LedgerFault(
        "The ledger holds an event of kind '" + id + "', which this version does not know",
        "Open it with the version that wrote it, or a newer one");
  }
}
