package corewright.measures.meter;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Readings of a recorded capture beside their truth. Means, droops and slopes are held against the
 * simulator's own points; ripple and extremes as well, but for noisy records against numpy on the
 * same samples, since noise is part of what those readings are of.
 */
record Against(String record, int hold, Quantity quantity, double truth, Measurement read) {
  private static final Map<Quantity, String> LEVELS =
      ordered(
          Quantity.LOAD, "/load_mean_A",
          Quantity.OUTPUT, "/vout_mean_V",
          Quantity.INPUT, "/vin_mean_V",
          Quantity.DRIFT, "/drift_V_per_min");

  private static final Map<Quantity, String> SHAPES =
      ordered(
          Quantity.RIPPLE_PEAK_TO_PEAK, "/vout_pp_V",
          Quantity.RIPPLE_RMS, "/ripple_rms_V",
          Quantity.RIPPLE_FUNDAMENTAL, "/fundamental/freq_Hz",
          Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE, "/fundamental/amplitude_V_peak",
          Quantity.UNDERSHOOT, "/transient/undershoot_ma_V",
          Quantity.OVERSHOOT, "/transient/overshoot_ma_V",
          Quantity.RECOVERY, "/transient/recovery_1pct_final_s",
          Quantity.INPUT_MINIMUM, "/vin_hold_min_V");

  /** Quantities with where their truth stands, in the order given. */
  private static Map<Quantity, String> ordered(Object... pairs) {
    Map<Quantity, String> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((Quantity) pairs[i], (String) pairs[i + 1]);
    }
    return map;
  }

  /** How many U the reading is off, with k = 2. */
  double ratio() {
    return Math.abs(read.value() - truth) / read.expanded(2);
  }

  boolean isLevelOrDroop() {
    return LEVELS.containsKey(quantity) && quantity != Quantity.DRIFT || quantity == Quantity.DROOP;
  }

  /** Every reading of a record that has a truth. */
  static List<Against> all(String name) {
    RecordedCapture recorded = RecordedCapture.of(name);
    MeasuredRun run = RunMeter.read(recorded.capture, recorded.settings());
    boolean noisy = recorded.truth.has("noise_rms");
    JsonNode shapes = recorded.truth.at(noisy ? "/capture_reference/steps" : "/truth/steps");
    JsonNode levels = recorded.truth.at("/truth/steps");
    JsonNode summary = recorded.truth.at("/truth/summary");
    List<Against> all = new ArrayList<>();
    for (MeasuredHold hold : run.holds()) {
      int i = hold.index();
      if (run.holds().size() != levels.size()) {
        continue; // a dead unit: one hold where seven loads were asked for
      }
      LEVELS.forEach((q, at) -> add(all, name, hold, q, levels.get(i).at(at)));
      if (i > 0) {
        add(all, name, hold, Quantity.DROOP, summary.at("/droop_V_per_step/" + i));
      }
      SHAPES.forEach((q, at) -> add(all, name, hold, q, shapes.get(i).at(at)));
    }
    JsonNode slope = summary.at("/rout_regression_up_steps_ohm");
    run.reading(Quantity.OUTPUT_RESISTANCE)
        .measurement()
        .filter(m -> slope.isNumber())
        .ifPresent(
            m -> all.add(new Against(name, -1, Quantity.OUTPUT_RESISTANCE, slope.asDouble(), m)));
    return all;
  }

  private static void add(
      List<Against> all, String name, MeasuredHold hold, Quantity quantity, JsonNode truth) {
    Optional<Measurement> read = hold.value(quantity);
    if (truth.isNumber() && read.isPresent()) {
      all.add(new Against(name, hold.index(), quantity, truth.asDouble(), read.get()));
    }
  }
}
