package corewright.measures;

/**
 * What can be read from a capture. Adding one: a constant here, its kernel, its line in {@code
 * RunMeter}. The {@link #id} is what JSON, limits and the ledger call it and never changes.
 */
public enum Quantity {
  LOAD("load", Unit.AMPERE, "Load"),
  OUTPUT("output", Unit.VOLT, "Output"),
  DROOP("droop", Unit.VOLT, "Droop"),
  LOAD_REGULATION("loadRegulation", Unit.PERCENT, "Load regulation"),
  RIPPLE_PEAK_TO_PEAK("ripplePeakToPeak", Unit.VOLT, "Ripple, peak to peak"),
  RIPPLE_RMS("rippleRms", Unit.VOLT, "Ripple, rms"),
  RIPPLE_FUNDAMENTAL("rippleFundamental", Unit.HERTZ, "Ripple fundamental"),
  RIPPLE_FUNDAMENTAL_AMPLITUDE(
      "rippleFundamentalAmplitude", Unit.VOLT, "Amplitude of the ripple fundamental"),
  UNDERSHOOT("undershoot", Unit.VOLT, "Undershoot"),
  OVERSHOOT("overshoot", Unit.VOLT, "Overshoot"),
  RECOVERY("recovery", Unit.SECOND, "Recovery"),
  DRIFT("drift", Unit.VOLT_PER_MINUTE, "Drift"),
  INPUT("input", Unit.VOLT, "Input"),
  INPUT_MINIMUM("inputMinimum", Unit.VOLT, "Input, lowest"),
  INPUT_CURRENT("inputCurrent", Unit.AMPERE, "Input current"),
  EFFICIENCY("efficiency", Unit.PERCENT, "Efficiency"),
  OUTPUT_MINIMUM("outputMinimum", Unit.VOLT, "Output, lowest"),
  OUTPUT_RESISTANCE("outputResistance", Unit.OHM, "Output resistance");

  private final String id;
  private final Unit unit;
  private final String title;

  Quantity(String id, Unit unit, String title) {
    this.id = id;
    this.unit = unit;
    this.title = title;
  }

  public String id() {
    return id;
  }

  public Unit unit() {
    return unit;
  }

  /** What a screen or a document calls it, in English. */
  public String title() {
    return title;
  }

  /**
   * @throws IllegalArgumentException naming the known ids, if none is {@code id}
   */
  public static Quantity of(String id) {
    for (Quantity quantity : values()) {
      if (quantity.id.equals(id)) {
        return quantity;
      }
    }
    throw new IllegalArgumentException("no quantity is called '" + id + "'");
  }
}
