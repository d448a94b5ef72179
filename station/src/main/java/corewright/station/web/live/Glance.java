package corewright.station.web.live;

/**
 * A bench at a glance, as every page shows it.
 *
 * @param name as {@code bench-1}; empty where there is no bench
 * @param form {@code off}, {@code on}, {@code unknown} or {@code danger}; the page's styles know
 *     these
 * @param words what is so, in three words
 * @param volts the measured voltage at the unit's terminals, with its unit
 * @param href where it is watched
 * @param stoppable whether a run is on, which STOP ends
 */
public record Glance(
    String name, String form, String words, String volts, String href, boolean stoppable) {

  /** No bench is described yet. */
  public static final Glance NONE = new Glance("", "off", "No bench yet", "–", "/bench", false);

  /** There are benches, and nothing was measured on any since the program started. */
  static final Glance NO_RUN =
      new Glance("", "off", "No run since the start", "–", "/bench", false);

  /** Whether it carries the sign for electricity. */
  public boolean warns() {
    return !form.equals("off");
  }
}
