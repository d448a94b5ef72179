package corewright.reports.document.template;

/** What a shop may do in a section. */
public enum Own {
  /** Nothing: it holds what was measured. */
  NOTHING,
  /** Add to what the program says there, and never take from it. */
  ADDED,
  /** Say it in other words. */
  INSTEAD
}
