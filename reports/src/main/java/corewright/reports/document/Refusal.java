package corewright.reports.document;

/** A document that the record does not support. The message says what is missing and what to do. */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Refusal(String what, String remedy) {
    super((what.endsWith(".") ? what : what + ".") + " " + remedy);
  }
}
