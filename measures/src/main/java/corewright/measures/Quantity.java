package corewright.measures;

/**
 * What can be read of a run: from its capture, or from an instrument beside the digitizer. Adding
 * one: a constant here, its kernel, its line in {@code RunMeter}. The {@link #id} is what JSON,
 * limits and the ledger call it and never changes.
 */
public enum Quantity {
  // What the converter delivers.
  LOAD("load", Unit.AMPERE, "Load"),
  OUTPUT("output", Unit.VOLT, "Output"),
  DROOP("droop", Unit.VOLT, "Droop"),
  LOAD_REGULATION("loadRegulation", Unit.PERCENT, "Load regulation"),
  RIPPLE_PEAK_TO_PEAK("ripplePeakToPeak", Unit.VOLT, "Ripple, peak to peak"),
  RIPPLE_RMS("rippleRms", Unit.VOLT, "Ripple, rms"),
  RIPPLE_RMS_DETRENDED("rippleRmsDetrended", Unit.VOLT, "Ripple, rms without the slow trend"),
  RIPPLE_PEAK_TO_PEAK_IN_BAND(
      "ripplePeakToPeakInBand", Unit.VOLT, "Ripple in the stated bandwidth, peak to peak"),
  RIPPLE_RMS_IN_BAND("rippleRmsInBand", Unit.VOLT, "Ripple in the stated bandwidth, rms"),
  RIPPLE_FUNDAMENTAL("rippleFundamental", Unit.HERTZ, "Ripple fundamental"),
  RIPPLE_FUNDAMENTAL_AMPLITUDE(
      "rippleFundamentalAmplitude", Unit.VOLT, "Amplitude of the ripple fundamental"),
  RIPPLE_SUBHARMONIC("rippleSubharmonic", Unit.PERCENT, "Half the ripple's frequency, of it"),
  RIPPLE_HARMONIC_2("rippleHarmonic2", Unit.VOLT, "Amplitude of the ripple's 2nd harmonic"),
  RIPPLE_HARMONIC_3("rippleHarmonic3", Unit.VOLT, "Amplitude of the ripple's 3rd harmonic"),
  RIPPLE_DISTORTION("rippleDistortion", Unit.PERCENT, "Harmonics 2 to 5 of the ripple, of it"),
  UNDERSHOOT("undershoot", Unit.VOLT, "Undershoot"),
  OVERSHOOT("overshoot", Unit.VOLT, "Overshoot"),
  RECOVERY("recovery", Unit.SECOND, "Recovery"),
  RECOVERY_QUARTER("recoveryQuarterPercent", Unit.SECOND, "Recovery to ±0.25 %"),
  RECOVERY_BAND("recoveryStatedBand", Unit.SECOND, "Recovery to the stated band"),
  TIME_OF_MINIMUM("timeOfMinimum", Unit.SECOND, "Lowest output after the edge, when"),
  DRIFT("drift", Unit.VOLT_PER_MINUTE, "Drift"),
  DRIFT_ROBUST("driftRobust", Unit.VOLT_PER_MINUTE, "Drift, median of all slopes"),
  OUTPUT_STEPS("outputSteps", Unit.ONE, "Sudden steps of the output"),
  LARGEST_STEP("largestStep", Unit.VOLT, "Largest sudden step of the output"),
  COLLAPSE("collapse", Unit.SECOND, "Collapse, after the edge"),
  INPUT_AT_COLLAPSE("inputAtCollapse", Unit.VOLT, "Input when the output collapsed"),
  HICCUP_PERIOD("hiccupPeriod", Unit.SECOND, "Hiccup period"),
  THERMAL_TIME_CONSTANT("thermalTimeConstant", Unit.SECOND, "Thermal time constant"),
  INPUT("input", Unit.VOLT, "Input"),
  INPUT_MINIMUM("inputMinimum", Unit.VOLT, "Input, lowest"),
  INPUT_CURRENT("inputCurrent", Unit.AMPERE, "Input current"),
  EFFICIENCY("efficiency", Unit.PERCENT, "Efficiency"),
  LINE_REGULATION("lineRegulation", Unit.PERCENT, "Line regulation"),
  OUTPUT_MINIMUM("outputMinimum", Unit.VOLT, "Output, lowest"),

  // What the capacitors hold, and their series resistance.
  PULSES("pulses", Unit.ONE, "Load pulses"),
  PULSE_RATE("pulseRate", Unit.HERTZ, "Rate of the load pulses"),
  DIP("dip", Unit.VOLT, "Dip per pulse, median"),
  DIP_SPREAD("dipSpread", Unit.VOLT, "Dip, spread from pulse to pulse"),
  DIP_OUTLIERS("dipOutliers", Unit.ONE, "Pulses whose dip stands out"),
  DIP_ALTERNATION("dipAlternation", Unit.VOLT, "Dip, every second pulse against the others"),
  CAPACITANCE_FROM_CHARGE("capacitanceFromCharge", Unit.FARAD, "Capacitance, from charge"),
  CAPACITANCE_FROM_DECAY("capacitanceFromDecay", Unit.FARAD, "Capacitance, from decay"),
  ESR("esr", Unit.OHM, "Series resistance of the capacitors and leads"),

  // The run as a whole.
  OUTPUT_RESISTANCE("outputResistance", Unit.OHM, "Output resistance", true),
  REGULATION_LOST("regulationLost", Unit.AMPERE, "Load at which regulation is lost", true),
  START_RISE("startRise", Unit.SECOND, "Start, 10 to 90 %", true),
  START_OVERSHOOT("startOvershoot", Unit.VOLT, "Start, overshoot", true),
  INRUSH("inrush", Unit.AMPERE, "Inrush, highest", true),
  INRUSH_I2T("inrushI2t", Unit.AMPERE_SQUARED_SECOND, "Inrush, I²t", true),
  DEAD_INPUT("deadInput", Unit.OHM, "Input before power", true),
  DEAD_OUTPUT("deadOutput", Unit.OHM, "Output before power", true),
  FIRST_POWER_INPUT("firstPowerInput", Unit.VOLT, "Input at the end of the first power", true),
  FIRST_POWER_OUTPUT("firstPowerOutput", Unit.VOLT, "Output at the end of the first power", true),
  NO_LOAD_CURRENT("noLoadCurrent", Unit.AMPERE, "Input current, enabled and without load", true),
  LINE_LOWEST("lineLowest", Unit.VOLT, "Output, lowest of all lines", true),
  LINE_HIGHEST("lineHighest", Unit.VOLT, "Output, highest of all lines", true),
  LINE_EFFECT("lineEffect", Unit.VOLT, "Output, from line to line", true),
  LOCK_OUT_OFF("lockOutOff", Unit.VOLT, "Input at which it turns off", true),
  LOCK_OUT_ON("lockOutOn", Unit.VOLT, "Input at which it turns on", true),
  LOCK_OUT_HYSTERESIS("lockOutHysteresis", Unit.VOLT, "Lock-out, hysteresis", true),
  HOLDS_TO("holdsTo", Unit.VOLT, "Input down to which it holds under load", true),
  FALLING_LOWEST("fallingLowest", Unit.VOLT, "Output while the input falls, lowest", true),
  CRANK_OUTPUT("crankOutput", Unit.VOLT, "Output while cranking, lowest mean", true),
  CRANK_LOWEST("crankLowest", Unit.VOLT, "Output while cranking, lowest", true),
  CRANK_DRIFT("crankDrift", Unit.VOLT_PER_MINUTE, "Drift while cranking, worst", true),
  CRANK_SPREAD("crankSpread", Unit.VOLT, "Cranking, from repeat to repeat", true),
  CRANK_INPUT("crankInput", Unit.VOLT, "Input while cranking, lowest", true),
  SURVIVAL_LOWEST("survivalLowest", Unit.VOLT, "Output through a deep cranking, lowest", true),
  SURVIVAL_OUT("survivalOut", Unit.SECOND, "Deep cranking, out of regulation", true),
  SURVIVAL_BACK("survivalBack", Unit.SECOND, "Deep cranking, until it works again", true),
  PULSED_OUTPUT("pulsedOutput", Unit.VOLT, "Output under load pulses", true),
  PULSED_OUTPUT_CRANKING(
      "pulsedOutputCranking", Unit.VOLT, "Output under load pulses, cranking rate", true),
  PULSED_DIP_CRANKING(
      "pulsedDipCranking", Unit.VOLT, "Load pulses at the cranking rate, dip, median", true),
  PULSED_OUTPUT_IDLE("pulsedOutputIdle", Unit.VOLT, "Output under load pulses, idle rate", true),
  PULSED_DIP_IDLE("pulsedDipIdle", Unit.VOLT, "Load pulses at the idle rate, dip, median", true),
  PULSED_RATE("pulsedRate", Unit.HERTZ, "Load pulses, rate", true),
  PULSED_DIP("pulsedDip", Unit.VOLT, "Load pulses, dip, median", true),
  PULSED_DIP_SPREAD("pulsedDipSpread", Unit.VOLT, "Load pulses, spread of the dip", true),
  PULSED_DIP_OUTLIERS("pulsedDipOutliers", Unit.ONE, "Load pulses whose dip stands out", true),
  PULSED_ALTERNATION("pulsedAlternation", Unit.VOLT, "Load pulses, every second dip", true),
  PULSED_RECOVERY("pulsedRecovery", Unit.SECOND, "Load pulses, recovery after each", true),
  PULSED_CAPACITANCE("pulsedCapacitance", Unit.FARAD, "Load pulses, capacitance", true),
  PULSED_ESR("pulsedEsr", Unit.OHM, "Load pulses, series resistance", true),
  BURST_PEAK_TO_PEAK("burstPeakToPeak", Unit.VOLT, "Ripple below 300 kHz, peak to peak", true),
  BURST_RMS("burstRms", Unit.VOLT, "Ripple below 300 kHz, rms", true),
  BURST_FUNDAMENTAL("burstFundamental", Unit.HERTZ, "Ripple, fundamental of the burst", true),
  DECAY_HALF("decayHalf", Unit.SECOND, "Half of the output after the input went", true),
  THERMAL_DRIFT("thermalDrift", Unit.VOLT, "Output, from cold to warm", true),
  CASE_RISE("caseRise", Unit.KELVIN, "Case, by how much it warmed", true),
  PIN_MISMATCHES("pinMismatches", Unit.ONE, "Pins that are not as the family's table says", true),
  INSULATION("insulation", Unit.OHM, "Case to terminals", true),
  KEY_OFF_CURRENT("keyOffCurrent", Unit.AMPERE, "Input current, not enabled", true),
  TAP_STEP("tapStep", Unit.VOLT, "Largest step while tapped and flexed", true),
  COLD_OUTPUT("coldOutput", Unit.VOLT, "Output, cold", true),
  COLD_DIP("coldDip", Unit.VOLT, "Load pulses cold, dip", true),
  COLD_ESR("coldEsr", Unit.OHM, "Load pulses cold, series resistance", true),
  HOT_DIP("hotDip", Unit.VOLT, "Load pulses hot, dip", true),
  HOT_KEY_OFF("hotKeyOff", Unit.AMPERE, "Input current hot, not enabled", true),
  HOT_OUTPUT("hotOutput", Unit.VOLT, "Output, hot", true),
  HIGH_LINE_OUTPUT("highLineOutput", Unit.VOLT, "Output at the highest line", true),
  HIGH_LINE_LOWEST("highLineLowest", Unit.VOLT, "Output at the highest line, lowest", true),

  // What a thermometer on the case reads.
  CASE_START("caseStart", Unit.CELSIUS, "Case at the start"),
  CASE_END("caseEnd", Unit.CELSIUS, "Case at the end"),
  CASE_HIGHEST("caseHighest", Unit.CELSIUS, "Case, hottest");

  private final String id;
  private final Unit unit;
  private final String title;
  private final boolean ofRun;

  Quantity(String id, Unit unit, String title) {
    this(id, unit, title, false);
  }

  Quantity(String id, Unit unit, String title, boolean ofRun) {
    this.id = id;
    this.unit = unit;
    this.title = title;
    this.ofRun = ofRun;
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

  /** Whether a run has one of it, and not each hold. */
  public boolean ofRun() {
    return ofRun;
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
