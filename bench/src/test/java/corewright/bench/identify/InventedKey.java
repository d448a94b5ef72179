package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.files.Origin;
import corewright.profiles.AbortLimits;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.Discharge;
import corewright.profiles.Economics;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Variant;
import corewright.profiles.Variant.Serviceable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Three builds of an invented family, and what tells them apart. */
final class InventedKey {
  static final Cue BOSSES = cue("bosses", TravelsWith.COVER, 0.92, 10, "6", "8");
  static final Cue CONNECTOR = cue("connector", TravelsWith.HEADER, 0.93, 15, "grey", "black");
  static final Cue PART = cue("part", TravelsWith.LABEL, 0.75, 15, "10", "20", "30");
  static final Cue DATE = cue("date", TravelsWith.LABEL, 0.70, 15, "early", "late");
  static final Cue HARDWARE = cue("hardware", TravelsWith.LABEL, 0.80, 15, "h1", "h2", "h3");
  static final Cue MASS = cue("mass", TravelsWith.BOARD, 0.80, 20, "light", "heavy");
  static final Cue SWITCHING = cue("switching", TravelsWith.BENCH, 0.90, 0, "65", "100", "other");
  static final Cue PINS = cue("pins", TravelsWith.BENCH, 0.99, 0, "ours", "another's");
  static final Cue BOARD = cue("board", TravelsWith.BOARD, 0.98, 1200, "B", "D", "G");

  static final Variant SOFT =
      variant(
          "SOFT", Serviceable.YES, "K1", 0.4, "6", "grey", "10", "early", "h1", "light", "65", "B");
  static final Variant GEL =
      variant(
          "GEL", Serviceable.YES, "K1", 0.3, "6", "grey", "20", "early", "h2", "light", "65", "D");
  static final Variant RESIN =
      variant(
          "RESIN", Serviceable.NO, "", 0.3, "8", "black", "30", "late", "h3", "heavy", "100", "G");

  private InventedKey() {}

  static Family family() {
    return family(List.of(SOFT, GEL, RESIN));
  }

  static Family family(List<Variant> variants) {
    return new Family(
        "inv48",
        7,
        "Invented",
        12.5,
        16,
        48,
        3,
        470e-6,
        0.015,
        100e3,
        new InputZones(10, 9),
        new AbortLimits(56, 30, 0.5, 18, 0.01, 90),
        new Discharge(470, 10, 5, 3),
        "arrival",
        false,
        variants,
        List.of(BOSSES, CONNECTOR, PART, DATE, HARDWARE, MASS, SWITCHING, PINS, BOARD),
        List.of(),
        new Economics("EUR", 480, 480, 310, 46, 2.6, 55, 18, 22, 40, 0.88, 60, 25),
        new Origin("invented", "", ""));
  }

  /** Answers as {@code bosses=6 part=10}, a minute apart. */
  static List<CueAnswer> answers(String words) {
    List<CueAnswer> answers = new ArrayList<>();
    Instant when = Instant.parse("2024-03-04T08:00:00Z");
    for (String word : words.split(" ")) {
      if (!word.isEmpty()) {
        String[] pair = word.split("=");
        answers.add(new CueAnswer(pair[0], pair[1].replace('_', ' '), "R. Acker", when));
        when = when.plusSeconds(60);
      }
    }
    return answers;
  }

  private static Cue cue(
      String id, TravelsWith with, double reliability, double cost_s, String... answers) {
    return new Cue(id, id + "?", "look", with, reliability, cost_s, List.of(answers));
  }

  private static Variant variant(
      String id,
      Serviceable serviceable,
      String kit,
      double prior,
      String bosses,
      String connector,
      String part,
      String date,
      String hardware,
      String mass,
      String switching,
      String board) {
    return new Variant(
        id,
        "invented " + id,
        serviceable,
        "it is invented",
        kit,
        prior,
        Map.of(
            "pins",
            List.of("ours"),
            "bosses",
            List.of(bosses),
            "connector",
            List.of(connector),
            "part",
            List.of(part),
            "date",
            List.of(date),
            "hardware",
            List.of(hardware),
            "mass",
            List.of(mass),
            "switching",
            List.of(switching),
            "board",
            List.of(board)));
  }
}
