package corewright.station.web.did;

/** When in a unit's life a run was made, as people say it. */
public final class Purposes {
  private Purposes() {}

  public static String words(String purpose) {
    return switch (purpose) {
      case "arrival" -> "as received";
      case "ship" -> "before shipping";
      case "claim" -> "as returned";
      default -> purpose;
    };
  }
}
