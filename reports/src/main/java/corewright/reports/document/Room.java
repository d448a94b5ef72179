package corewright.reports.document;

import java.util.List;

/**
 * How much of what could be said a page has room for.
 *
 * @param text how much of its usual length foreign text gets, 0 to 1
 * @param everyRow whether limits that were met with ease have rows of their own
 */
record Room(double text, boolean everyRow) {
  static final Room WHOLE = new Room(1, true);

  /** Tried in turn until the page fits: first the type is set tighter, foreign text is cut last. */
  static final List<Room> TRIED =
      List.of(WHOLE, WHOLE, new Room(1, false), new Room(0.6, false), new Room(0.3, false));
}
