package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Synthetic;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the capacitors hold, against the values of the parts in the simulated circuits (captures: C
 * 470 µF or 141 µF and 2.2 µF beside it, series resistance 15 or 150 mΩ, leads 15 mΩ, bleeder 2.2
 * kΩ; see the README of the captures) and against closed forms.
 */
class StorageTest {
  private static final double LEADS_OHM = 0.015;

  @ParameterizedTest
  @CsvSource({
    "healthy_sw, 472.2e-6, 0.015",
    "cap_loss_sw, 143.2e-6, 0.015",
    "high_esr_sw, 472.2e-6, 0.15"
  })
  void theFirstStepTellsThePartsOfTheCircuit(String name, double c_F, double esr_ohm) {
    RecordedCapture record = RecordedCapture.of(name);
    MeasuredRun run =
        RunMeter.read(
            record.capture,
            record.settings().withCircuit(Optional.of(1 / 9.865e-6), Optional.of(2200.0)));
    MeasuredHold first = run.holds().get(1);
    within(c_F, first, Quantity.CAPACITANCE_FROM_CHARGE, 0.2);
    within(esr_ohm + LEADS_OHM, first, Quantity.ESR, 0.2);
    within(c_F, run.holds().get(6), Quantity.CAPACITANCE_FROM_DECAY, 0.03);
    for (MeasuredHold hold : run.holds()) {
      hold.value(Quantity.ESR).ifPresent(m -> near(esr_ohm + LEADS_OHM, m));
      hold.value(Quantity.CAPACITANCE_FROM_CHARGE).ifPresent(m -> near(c_F, m));
    }
  }

  @Test
  void withoutTheResistanceADecayTellsNothing() {
    RecordedCapture record = RecordedCapture.of("healthy_sw");
    MeasuredRun run = RunMeter.read(record.capture, record.settings());
    says("resistance", run.holds().get(6).readings().get(Quantity.CAPACITANCE_FROM_DECAY));
  }

  @Test
  void aSlowRecordSaysThatItIsTooSlow() {
    RecordedCapture record = RecordedCapture.of("healthy_avg");
    MeasuredRun run = RunMeter.read(record.capture, record.settings());
    for (MeasuredHold hold : run.holds()) {
      says("100,000 are needed", hold.readings().get(Quantity.ESR));
      says("100,000 are needed", hold.readings().get(Quantity.CAPACITANCE_FROM_CHARGE));
    }
  }

  /** The reference designs of the three families; noise as a bench of 16 bits has it. */
  @ParameterizedTest
  @CsvSource({
    "2000e-6, 0.015, 20, 0.4e-3, 440, 200e3",
    "2000e-6, 0.060, 20, 0.4e-3, 93, 100e3",
    "1000e-6, 0.015, 20, 0.4e-3, 440, 200e3",
    "220e-6, 0.15, 2.8, 0.5e-3, 240, 100e3",
    "470e-6, 0.02, 12, 0.25e-3, 433, 200e3",
  })
  void pulsesTellDipCapacitanceAndResistance(
      double c_F, double esr_ohm, double peak_A, double ramp_s, double rate, double sampleRate) {
    PulseSeries series = new PulseSeries(c_F, esr_ohm, peak_A, ramp_s, rate);
    MeasuredRun run =
        RunMeter.read(
            series.capture(sampleRate, 1.0, 0.003, 0.0015, 5),
            new MeterSettings(Optional.of(0.1), Optional.of(0.01), Optional.of(48.0), Map.of()));
    MeasuredHold hold = run.holds().get(0);
    assertEquals(1, run.holds().size());
    assertEquals(
        0.89 * rate, hold.value(Quantity.PULSES).orElseThrow().value(), 2, "pulses in the window");
    within(rate, hold, Quantity.PULSE_RATE, 0.01);
    within(series.dip_V(), hold, Quantity.DIP, 0.1);
    within(c_F, hold, Quantity.CAPACITANCE_FROM_CHARGE, 0.08);
    within(esr_ohm, hold, Quantity.ESR, 0.25);
    assertEquals(0, hold.value(Quantity.DIP_OUTLIERS).orElseThrow().value(), 0.03 * rate);
    Measurement alternation = hold.value(Quantity.DIP_ALTERNATION).orElseThrow();
    assertTrue(Math.abs(alternation.value()) <= 2 * alternation.expanded(2));
  }

  /** A microhenry in the leads adds 0.2 V while the load steps 2 A in 10 µs: four times R·I. */
  @Test
  void theInductanceOfTheLeadsIsNotTakenForResistance() {
    double c_F = 470e-6;
    double r_ohm = 0.03;
    double edge_s = 10e-6;
    double slope = 2 / edge_s;
    Synthetic.Signal output =
        new Synthetic.Signal(
            t -> {
              double since = t - 0.01 + edge_s / 2;
              double ramp = Math.max(0, Math.min(edge_s, since));
              double charge = slope * ramp * ramp / 2 + 2 * Math.max(0, since - edge_s);
              boolean moves = since > 0 && since < edge_s;
              // The converter makes up for what is missing within 2 ms.
              double answered = Math.max(0, since - 50e-6) / 2e-3;
              return 48
                  - r_ohm * slope * ramp
                  - charge / c_F * Math.exp(-answered)
                  - (moves ? 1e-6 * slope : 0);
            },
            0.0005,
            1e-4);
    MeasuredRun run =
        RunMeter.read(
            Synthetic.capture(
                1e6,
                0.02,
                new Synthetic.Signal(
                    Synthetic.steps(new double[] {0, 0.01}, new double[] {0, 2}, edge_s), 0, 1e-4),
                output,
                Synthetic.exactly(12),
                1),
            Synthetic.settings(0.005, 0.0001, 48));
    within(r_ohm, run.holds().get(1), Quantity.ESR, 0.2);
    within(c_F, run.holds().get(1), Quantity.CAPACITANCE_FROM_CHARGE, 0.2);
  }

  /** Within U, and U at most a part of the value. */
  private static void within(double truth, MeasuredHold hold, Quantity quantity, double part) {
    Measurement read =
        hold.value(quantity)
            .orElseThrow(() -> new AssertionError(quantity + " " + hold.readings().get(quantity)));
    assertEquals(truth, read.value(), read.expanded(2), quantity + " " + read);
    assertTrue(read.expanded(2) <= part * truth, quantity + " is too uncertain: " + read);
  }

  private static void near(double truth, Measurement read) {
    assertEquals(truth, read.value(), 1.5 * read.expanded(2), read.toString());
  }

  private static void says(String words, Reading reading) {
    String reason = assertInstanceOf(Reading.NotMeasured.class, reading).reason();
    assertTrue(reason.contains(words), reason);
  }
}
