package corewright.station.cli;

import corewright.bench.commission.Plug;
import corewright.files.BadFile;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.station.work.Refused;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What nothing but a person can say of a new bench; each is read before anything is energised. */
final class BenchQuestions {
  private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]*"); // bench.schema.json
  private static final int LONGEST_ID = 26; // the ledger's 32, less what tells it is a bench

  private final BenchTalk talk;

  BenchQuestions(BenchTalk talk) {
    this.talk = talk;
  }

  String called(Optional<String> given) {
    return talk.typed(
        given,
        "What shall the bench be called? As bench-1: small letters, digits, hyphens.",
        "Everything that is measured on it is kept under this name.",
        "--id",
        typed -> {
          if (!ID.matcher(typed).matches() || typed.length() > LONGEST_ID) {
            throw new Refused(
                "'" + typed + "' is no name for a bench",
                "Write small letters, digits and hyphens, as bench-1, 26 at most.");
          }
          return typed;
        });
  }

  List<String> families(Optional<String> given, Catalogue catalogue) {
    List<String> there = catalogue.families().stream().map(Family::id).toList();
    return talk.typed(
        given,
        "Which families does the fixture fit? "
            + String.join(", ", there)
            + "; with commas between.",
        "A run on a unit of another family is refused.",
        "--family",
        typed -> {
          List<String> fits = List.of(typed.strip().split("\\s*,\\s*"));
          fits.forEach(family -> known(family, catalogue, there));
          return fits;
        });
  }

  private static void known(String family, Catalogue catalogue, List<String> there) {
    try {
      catalogue.family(family);
    } catch (BadFile none) {
      throw new Refused(
          "There is no family '" + family + "'", "There are: " + String.join(", ", there) + ".");
    }
  }

  double discharge_ohm(Optional<String> given) {
    return talk.typed(
        given,
        "How many Ω has the fixture's discharge resistor?",
        "A run on a unit that needs another one is refused.",
        "--discharge",
        typed -> number(typed, "470"));
  }

  /** No less than what commissioning puts through the resistor. */
  double ceiling_V(Optional<String> given) {
    return talk.typed(
        given,
        "How many volts may the fixture see at most?",
        "A run that needs more is refused.",
        "--ceiling",
        typed -> {
          double ceiling_V = number(typed, "60");
          if (ceiling_V < Plug.SUPPLY_V) {
            throw new Refused(
                "A fixture that may see " + typed.strip() + " V bears no resistor at 10 V",
                "Say what it may really see; the units that it is for need more.");
          }
          return ceiling_V;
        });
  }

  Plug plug(Optional<String> given) {
    return talk.typed(
        given,
        "What resistor stands in the place of the unit? Its Ω with U, as 10±0.1 or 10±1%.",
        "Between 2 and 50 Ω; measure it, with its leads. Half of 10 V will fall across it.",
        "--resistor",
        typed -> {
          try {
            return Plug.of(OhmText.read(typed));
          } catch (IllegalArgumentException unfit) {
            throw new Refused(
                "'" + typed + "' will not do: " + unfit.getMessage(), "Take another one.");
          }
        });
  }

  String name(Optional<String> given) {
    return talk.typed(
        given,
        "Type your name to confirm that you have read this and that no unit is on the bench.",
        "Somebody answers for what is energised.",
        "--confirmed-by",
        typed -> PersonName.of(typed, "--confirmed-by"));
  }

  private static double number(String typed, String example) {
    try {
      double value = Double.parseDouble(typed.replace(',', '.').strip());
      if (value > 0 && Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException none) {
      // said below
    }
    throw new Refused(
        "'" + typed.strip() + "' is no number above 0", "Write it as " + example + ".");
  }
}
