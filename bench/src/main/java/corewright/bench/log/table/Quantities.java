package corewright.bench.log.table;

import java.util.List;
import java.util.Optional;

/**
 * What tells a voltage from the many other things that are called boost, output, injector or
 * driver, where neither unit nor name speaks of volts. Common words of the trade, no source.
 */
final class Quantities {
  private Quantities() {}

  /** Words of another quantity, or of another thing than the converter. */
  private static final Words OTHER =
      Words.of(
          "*torque* *moment* *couple* *temp* *position* *stellung* *duty* *tastverh* *angle*",
          "*winkel* *timing* *speed* *load* *last* *power* *leistung* *level* *stand* *deviation*",
          "*abweich* *error* *fehler* *adapt* *correct* *korrek* *trim* *slip* *schlupf* *ratio*",
          "*flow* *vacuum* *vakuum* *brake* *brems* *fan* *pump* *wastegate* *count* *hours*",
          "*stunden* *time* *dauer* *duration* *status* *state* *current* *strom* *courant*",
          "*corrente* *corriente* amp amps soc *charge* *humid* *shaft* *gear* *catalyt* *cataly*",
          "*valve* *ventil* *vanne* *valvola* *throttle* *seat* *side* *door* *window* *demand*",
          "*volume* *mass* *menge* *quantity* *qty* *freq* *period* *pulse* *width* *resist*",
          "*ladeluft* *turbine* *turbo* *compressor* *control* *regel* *limit* *max* *min* *avg*",
          "*average* *mode* *flag* *enable* *active* *fault* *code* *dtc* *temperatura* *froid*");

  /** Words that may stand beside those of the output and of volts without changing them. */
  private static final Words PLAIN =
      Words.of(
          "actual act measured meas ist istwert real value wert val reading sensed sense feedback",
          "fb monitor mon bank bk cyl cylinder zyl group channel ch chan kanal line rail bus stage",
          "feed supply side internal int ext circuit unit module ecu dc dcdc step up drive the of",
          "in on at fuel engine eng mot motor diesel gemessen mesure mesuree medido misurato",
          "gemeten zmierzon* uppmatt effectif effettiv* efectiv* high low side main pre",
          "endstufe stufe versorgung zentral* leitung signal sig reg regulated");

  /** Whether nothing in the name speaks of anything but an output in volts. */
  static boolean onlyTheOutput(Label label) {
    return !OTHER.in(label) && label.words().stream().allMatch(Quantities::known);
  }

  private static boolean known(String word) {
    boolean address = word.length() <= 5 && word.chars().anyMatch(Character::isDigit);
    Label one = new Label(word, List.of(word), word, Optional.empty());
    return word.length() <= 2
        || address
        || PLAIN.in(one)
        || Vocabulary.OUTPUT.in(one)
        || Vocabulary.OUTPUT_SURE.in(one)
        || Vocabulary.VOLT.in(one)
        || Vocabulary.SUPPLY.in(one);
  }
}
