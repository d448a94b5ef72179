package corewright.station.web;

import corewright.bench.life.Stage;

/**
 * The step that comes next for a unit, and where it is taken.
 *
 * @param verb as {@code Test it}
 */
public record Next(String verb, String href) {

  /** What a unit at a stage waits for; its life where it waits for nothing. */
  public static Next of(String tag, Stage stage) {
    return switch (stage) {
      case RECEIVED -> new Next("See which build", "/build/" + tag);
      case IDENTIFIED, CLOSED -> new Next("Test it", "/bench?tag=" + tag);
      case TESTED, PENDING -> new Next("What we do with it", "/decide/" + tag);
      case TO_REBUILD, OPEN -> new Next("Rebuild it", "/rebuild/" + tag);
      case PROVEN, SEALED, PACKED, TO_REPLACE, TO_RETURN ->
          new Next("Hand it over", "/handover/" + tag);
      case SHIPPED -> new Next("It came back", "/cameback/" + tag);
      default -> new Next("Its life", "/unit/" + tag);
    };
  }
}
