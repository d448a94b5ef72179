package corewright.station.web;

/** The places, in the order of a core's way; the last ones are the office. */
public enum PlaceName {
  TODAY("Today", "/"),
  COUNTER("Counter", "/counter"),
  WHICH_BUILD("Which build", "/build"),
  BENCH("Bench", "/bench"),
  WHAT_IT_DID("What it did", "/did"),
  WHAT_WE_DO("What we do", "/decide"),
  REBUILD("Rebuild", "/rebuild"),
  HAND_OVER("Hand over", "/handover"),
  CAME_BACK("Came back", "/cameback"),
  THE_SHOP("The shop", "/shop"),
  HOUSE_RULES("House rules", "/rules"),
  PRACTICE("Practice", "/practice");

  private final String words;
  private final String path;

  PlaceName(String words, String path) {
    this.words = words;
    this.path = path;
  }

  public String words() {
    return words;
  }

  public String path() {
    return path;
  }

  /** Whether it belongs to the office, and not to the way of a core. */
  public boolean side() {
    return compareTo(CAME_BACK) >= 0;
  }
}
