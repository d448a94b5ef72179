package corewright.bench.log.table;

/**
 * What a name says about a voltage.
 *
 * @param out weight of the words for the output; below nothing where it is the converter's input
 * @param in weight of the words for a supply
 * @param volts whether name or unit speaks of volts
 * @param battery whether it is the battery's
 * @param sure whether only the output is called that
 * @param boost whether a pressure might be called that too
 * @param blank whether there is no name
 */
record VoltageName(
    int out, int in, boolean volts, boolean battery, boolean sure, boolean boost, boolean blank) {

  static VoltageName of(Label label, boolean unitIsVolt) {
    boolean input = Vocabulary.INPUT.in(label);
    int surely = Vocabulary.OUTPUT_SURE.count(label);
    return new VoltageName(
        Vocabulary.OUTPUT.count(label) + 2 * surely - (input ? 6 : 0),
        Vocabulary.SUPPLY.count(label) + (input ? 6 : 0),
        unitIsVolt || Vocabulary.VOLT.in(label),
        Vocabulary.BATTERY.in(label),
        surely > 0,
        Vocabulary.INTAKE_BOOST.in(label),
        label.blank());
  }

  /** For the side that {@code weight} speaks for. */
  double confidence(int weight) {
    if (weight <= 0) {
      return 0.5;
    }
    return volts ? 0.95 : 0.8;
  }

  boolean outputRatherThanSupply() {
    return sure && out > in;
  }
}
