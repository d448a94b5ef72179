package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every reading of the recorded captures against {@code capture_reference} of their truth.json: the
 * same definitions, applied by numpy to the same samples.
 */
class RecordedCaptureTest {

  static Stream<String> stepped() {
    return RecordedCapture.NAMES.stream().filter(name -> !name.equals("dead_avg"));
  }

  @ParameterizedTest
  @MethodSource("stepped")
  void readingsAgreeWithNumpyOnTheSameSamples(String name) {
    RecordedCapture recorded = RecordedCapture.of(name);
    MeasuredRun run = RunMeter.read(recorded.capture, recorded.settings());
    JsonNode steps = recorded.truth.at("/capture_reference/steps");
    assertEquals(steps.size(), run.holds().size(), "holds");
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      new Comparison(name, run.holds().get(i), steps.get(i), wrong).all(recorded);
    }
    assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
  }

  @ParameterizedTest
  @MethodSource("stepped")
  void outputResistanceAgreesWithTheRegressionOverTheRisingSteps(String name) {
    RecordedCapture recorded = RecordedCapture.of(name);
    MeasuredRun run = RunMeter.read(recorded.capture, recorded.settings());
    double expected =
        recorded
            .truth
            .at("/capture_reference/summary/rout_regression_up_steps_ohm")
            .asDouble(Double.NaN);
    Reading read = run.readings().get(Quantity.OUTPUT_RESISTANCE);
    // 3 mV of droop over the 3 A of these records.
    assertEquals(expected, read.measurement().orElseThrow().value(), 0.001);
  }

  @Test
  void aDeadUnitIsOneHold() {
    RecordedCapture recorded = RecordedCapture.of("dead_avg");
    MeasuredRun run = RunMeter.read(recorded.capture, recorded.settings());
    assertEquals(1, run.holds().size());
    MeasuredHold hold = run.holds().get(0);
    assertEquals(0, hold.start_s());
    assertEquals(28, hold.end_s(), 1e-9);
    assertEquals(0, hold.value(Quantity.OUTPUT).orElseThrow().value(), 0.002);
    assertEquals("no_edge", hold.recoveryState());
  }

  /** JCGM 100, 7.2.1: no result without its uncertainty; one that is defined says so. */
  @Test
  void onlyTheHoldThatDroopRefersToHasNoUncertaintyAndItSaysWhy() {
    RecordedCapture recorded = RecordedCapture.of("healthy_avg");
    for (MeasuredHold hold : RunMeter.read(recorded.capture, recorded.settings()).holds()) {
      for (Quantity quantity : List.of(Quantity.DROOP, Quantity.LOAD_REGULATION)) {
        Measurement reading = hold.value(quantity).orElseThrow();
        assertEquals(hold.index() > 0, reading.u() > 0, quantity + " of hold " + hold.index());
        boolean said =
            hold.readings().get(quantity) instanceof Reading.Measured m
                && m.flags().stream().anyMatch(f -> f.contains("definition"));
        assertEquals(hold.index() == 0, said, quantity + " of hold " + hold.index());
      }
    }
  }

  /** One hold against one step, each tolerance as stated with the captures. */
  private record Comparison(String name, MeasuredHold hold, JsonNode step, List<String> wrong) {

    void all(RecordedCapture recorded) {
      double sample_s = 1 / recorded.truth.get("sample_rate_Hz").asDouble();
      within("start", step.get("t_start").asDouble(), hold.start_s(), 0.05 * sample_s);
      within("end", step.get("t_end").asDouble(), hold.end_s(), 0.05 * sample_s);
      reading(Quantity.OUTPUT, "/vout_mean_V", 0.002);
      reading(Quantity.LOAD, "/load_mean_A", 0.002);
      reading(Quantity.INPUT, "/vin_mean_V", 0.002);
      reading(Quantity.INPUT_MINIMUM, "/vin_hold_min_V", 0.002);
      reading(Quantity.RIPPLE_RMS, "/ripple_rms_V", Math.max(0.001, part(0.03, "/ripple_rms_V")));
      reading(
          Quantity.RIPPLE_PEAK_TO_PEAK, "/vout_pp_V", Math.max(0.005, part(0.05, "/vout_pp_V")));
      JsonNode summary = recorded.truth.at("/capture_reference/summary");
      double droop = summary.at("/droop_V_per_step/" + hold.index()).asDouble();
      value(Quantity.DROOP, droop, 0.003);
      double loaded = step.get("vout_mean_V").asDouble();
      value(Quantity.LOAD_REGULATION, 100 * droop / loaded, 100 * 0.003 / loaded);
      if (!name.endsWith(
          "_sw")) { // there the reference leaves out the guard, and with it half a ramp
        reading(Quantity.OUTPUT_MINIMUM, "/vout_hold_min_V", 0.002);
      }
      if (name.endsWith("_avg") || name.endsWith("_noisy12")) {
        reading(Quantity.DRIFT, "/drift_V_per_min", 1e-6 + part(1e-6, "/drift_V_per_min"));
      }
      if (name.endsWith("_sw") && step.get("load_commanded_A").asDouble() > 0.1) {
        reading(
            Quantity.RIPPLE_FUNDAMENTAL,
            "/fundamental/freq_Hz",
            part(0.002, "/fundamental/freq_Hz"));
        reading(
            Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE,
            "/fundamental/amplitude_V_peak",
            part(0.01, "/fundamental/amplitude_V_peak"));
      }
      if (step.has("transient")) {
        reading(Quantity.UNDERSHOOT, "/transient/undershoot_ma_V", 0.005);
        reading(Quantity.OVERSHOOT, "/transient/overshoot_ma_V", 0.005);
        recovery();
        quarter();
      }
    }

    /** ±0.25 % where noise and ripple leave room for it, and the time of the minimum. */
    private void quarter() {
      String state = step.at("/transient/recovery_0p25pct_final_state").asText();
      if (hold.value(Quantity.RECOVERY_QUARTER).isPresent() && state.equals("recovered")) {
        String pointer = "/transient/recovery_0p25pct_final_s";
        // Ripple leaves the band now and then: a period of the slowest beat of it with the samples.
        reading(Quantity.RECOVERY_QUARTER, pointer, Math.max(0.3e-3, part(0.1, pointer)));
      }
      double u = hold.value(Quantity.TIME_OF_MINIMUM).map(m -> m.expanded(2)).orElse(0.0);
      if (u > 0) {
        reading(Quantity.TIME_OF_MINIMUM, "/transient/t_min_after_edge_s", u);
      }
    }

    private void recovery() {
      String state = step.at("/transient/recovery_1pct_final_state").asText();
      if (!state.equals(hold.recoveryState())) {
        wrong.add(at("recovery") + hold.recoveryState() + ", expected " + state);
      } else if (state.equals("recovered")) {
        String pointer = "/transient/recovery_1pct_final_s";
        reading(Quantity.RECOVERY, pointer, Math.max(0.3e-3, part(0.1, pointer)));
      }
    }

    private void reading(Quantity quantity, String pointer, double tolerance) {
      value(quantity, step.at(pointer).asDouble(Double.NaN), tolerance);
    }

    private void value(Quantity quantity, double expected, double tolerance) {
      double read = hold.value(quantity).map(m -> m.value()).orElse(Double.NaN);
      within(quantity.id(), expected, read, tolerance);
    }

    private void within(String what, double expected, double read, double tolerance) {
      if (!(Math.abs(read - expected) <= tolerance)) {
        wrong.add(at(what) + read + ", expected " + expected + " ± " + tolerance);
      }
    }

    private double part(double part, String pointer) {
      return part * Math.abs(step.at(pointer).asDouble(Double.NaN));
    }

    private String at(String what) {
      return name + " hold " + hold.index() + " " + what + ": ";
    }
  }
}
