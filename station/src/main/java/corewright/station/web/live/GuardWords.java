package corewright.station.web.live;

import java.util.Map;

/** The guards in one or two words, for a list that is read at arm's length. */
final class GuardWords {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("cautions-confirmed", "Cautions"),
          Map.entry("identity-known", "Build"),
          Map.entry("checklist-clear", "Unit"),
          Map.entry("contacts-good", "Contacts"),
          Map.entry("operator-authorised", "Operator"),
          Map.entry("second-person", "Second person"),
          Map.entry("profile-fits-family", "Profile"),
          Map.entry("order-of-steps", "Steps"),
          Map.entry("levels-allowed", "Levels"),
          Map.entry("trip-margin", "Trip time"),
          Map.entry("interlock-whole", "Cover"),
          Map.entry("discharge-connected", "Discharge"),
          Map.entry("fixture-fits-family", "Fixture"),
          Map.entry("fixture-rated", "Fixture rating"),
          Map.entry("discharge-path", "Discharge path"),
          Map.entry("channels-sampled", "Channels"),
          Map.entry("line-rate", "Line"),
          Map.entry("unit-may-be-powered", "Power"),
          Map.entry("bench-in-control", "Bench"),
          Map.entry("sample-rate", "Sample rate"),
          Map.entry("temperature-fits-profile", "Warmth"));

  private GuardWords() {}

  static String of(String id) {
    return WORDS.getOrDefault(id, id.replace('-', ' '));
  }
}
