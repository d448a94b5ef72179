package corewright.reports.ledger;

/** The ledger refused or could not do something. The message says what, where and what to do. */
public final class LedgerFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public LedgerFault(String what, String remedy) {
    super(what + ". " + remedy);
  }

  public LedgerFault(String what, String remedy, Throwable cause) {
    super(what + ". " + remedy, cause);
  }
}
