package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.files.Origin;
import corewright.profiles.AbortLimits;
import corewright.profiles.CheckItem;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.DateFormat;
import corewright.profiles.DeadLimits;
import corewright.profiles.Discharge;
import corewright.profiles.Economics;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Scale;
import corewright.profiles.Sign;
import corewright.profiles.Variant;
import corewright.profiles.Variant.Serviceable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

  /** Early builds from 2012w10 on, late ones from 2015w40 to 2017w10. */
  static final Scale WEEKS =
      new Scale(
          "year and week",
          List.of(new Scale.Band("early", 201210, 201540), new Scale.Band("late", 201540, 201711)),
          List.of(DateFormat.YYWW, DateFormat.YYYYWW));

  static final Cue DATE_READ =
      new Cue(
          "date",
          "date?",
          "look",
          TravelsWith.LABEL,
          0.70,
          15,
          List.of("early", "late"),
          Optional.of(WEEKS));
  static final Cue PARTS_READ =
      new Cue(
          "parts",
          "parts?",
          "look",
          TravelsWith.BOARD,
          0.95,
          1200,
          List.of("early", "late"),
          Optional.of(WEEKS));
  static final Cue WEIGHED =
      new Cue(
          "mass",
          "mass?",
          "look",
          TravelsWith.BOARD,
          0.80,
          20,
          List.of("light", "heavy"),
          Optional.of(
              new Scale(
                  "g",
                  List.of(new Scale.Band("light", 200, 500), new Scale.Band("heavy", 500, 1200)))),
          Optional.of(0.60));

  static final CheckItem OUTSIDE =
      item("outside", List.of("sound", "opened"), Map.of("opened", Sign.OPENED));
  static final CheckItem LABEL =
      item("label", List.of("whole", "moved"), Map.of("moved", Sign.LABEL_MOVED));
  static final CheckItem SOLDER =
      item("solder", List.of("no", "yes"), Map.of("yes", Sign.RESOLDERED));

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
    return family(
        variants,
        List.of(BOSSES, CONNECTOR, PART, DATE, HARDWARE, MASS, SWITCHING, PINS, BOARD),
        List.of());
  }

  /** The family with dates that are read, filling and mass that a hand changes, and a checklist. */
  static Family dated() {
    return family(
        List.of(SOFT, GEL, RESIN),
        List.of(BOSSES, CONNECTOR, PART, DATE_READ, WEIGHED, SWITCHING, BOARD, PARTS_READ),
        List.of(OUTSIDE, LABEL, SOLDER));
  }

  private static Family family(List<Variant> variants, List<Cue> cues, List<CheckItem> checklist) {
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
        new DeadLimits(50, 500),
        "arrival",
        false,
        variants,
        cues,
        checklist,
        new Economics("EUR", 480, 480, 310, 46, 2.6, 55, 18, 22, 40, 0.88, 60, 25),
        new Origin("invented", "", ""));
  }

  /** The date cue with another scale. */
  static Cue with(Scale scale) {
    return new Cue(
        "date",
        "date?",
        "look",
        TravelsWith.LABEL,
        0.70,
        15,
        List.of("early", "late"),
        Optional.of(scale));
  }

  /** Of these the words are what stands on the unit or on the scale. */
  private static final Set<String> READ = Set.of("date", "parts", "mass");

  /** Answers as {@code bosses=6 part=10}, a minute apart. */
  static List<CueAnswer> answers(String words) {
    List<CueAnswer> answers = new ArrayList<>();
    Instant when = Instant.parse("2024-03-04T08:00:00Z");
    for (String word : words.split(" ")) {
      if (!word.isEmpty()) {
        String[] pair = word.split("=");
        String answer = pair[1].replace('_', ' ');
        answers.add(
            READ.contains(pair[0]) && Character.isDigit(answer.charAt(0))
                ? new CueAnswer(pair[0], Identifier.NOT_SEEN, "R. Acker", when, answer, "")
                : new CueAnswer(pair[0], answer, "R. Acker", when));
        when = when.plusSeconds(60);
      }
    }
    return answers;
  }

  private static CheckItem item(String id, List<String> answers, Map<String, Sign> signs) {
    return new CheckItem(
        id, "outside", id + "?", answers, List.of(), "", Map.of(), Map.of(), signs, false);
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
