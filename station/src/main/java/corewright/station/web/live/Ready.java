package corewright.station.web.live;

import java.util.List;

/**
 * A bench before the start, as its page shows it.
 *
 * @param unit what is on it, in words; empty until a unit is chosen
 * @param plan what the picture is drawn from; empty until a unit is chosen
 * @param byHand how much of what this bench cannot do is entered, in words; empty where it can do
 *     all of the profile
 * @param missing what stands in the way, each with what to do
 * @param holds the guards that hold already
 * @param later the guards that only the open bench can answer
 * @param needsSecond whether a second person must be there
 * @param asksForPassword whether they prove who they are
 * @param wireLog whether every byte on the wires will be kept
 * @param proved whether they have, for this unit and not long ago
 * @param canStart whether nothing is missing
 */
public record Ready(
    String bench,
    String title,
    boolean emulated,
    String tag,
    String unit,
    List<Choice> units,
    List<Choice> profiles,
    String plan,
    List<String> cautions,
    boolean confirmed,
    boolean needsSecond,
    boolean asksForPassword,
    String second,
    boolean proved,
    boolean wireLog,
    String byHand,
    List<GuardRow> missing,
    List<GuardRow> holds,
    List<GuardRow> later,
    List<String> told,
    boolean canStart) {

  static final String AGAIN = "Look again in a minute.";

  /** Something to choose. */
  public record Choice(String value, String words, boolean chosen) {}

  /**
   * Whether something stands in the way that goes by itself: then there is a button to look again.
   */
  public boolean waits() {
    return missing.stream().anyMatch(row -> row.text().endsWith(AGAIN));
  }

  /** How many things are missing, as the foot of the page says it. */
  public String missingWords() {
    return missing.size() == 1
        ? "One thing before it can start."
        : missing.size() + " things before it can start.";
  }

  public int guards() {
    return missing.size() + holds.size() + later.size();
  }
}
