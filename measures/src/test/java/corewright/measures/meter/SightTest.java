package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Synthetic;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a channel cannot see is said, and a gap leaves no reading that it touches. */
class SightTest {
  private static final double RATE = 10e3;

  @Test
  void aChannelAtTheEndOfItsRangeIsSaid() {
    Synthetic.Signal clipped =
        new Synthetic.Signal(
            t -> Math.min(48.2, 48 + 0.3 * Math.sin(2 * Math.PI * 50 * t)), 0, 0.005);
    assertEquals(3, clips(run(clipped, List.of()))); // in each hold
  }

  @ParameterizedTest
  @ValueSource(strings = {"healthy_sw", "healthy_avg_noisy12", "hiccup_avg", "crank_good_avg"})
  void aChannelThatSeesEverythingIsNotAccused(String name) {
    RecordedCapture record = RecordedCapture.of(name);
    assertEquals(0, clips(RunMeter.read(record.capture, record.settings())));
  }

  @Test
  void noiseAndSinesAreNotAccused() {
    assertEquals(0, clips(run(new Synthetic.Signal(t -> 48, 0.05, 0.005), List.of())));
    assertEquals(
        0,
        clips(
            run(
                new Synthetic.Signal(t -> 48 + 0.3 * Math.sin(2 * Math.PI * 51.3 * t), 0.01, 0.005),
                List.of())));
  }

  @Test
  void aStepWiderThanTheNoiseIsSaid() {
    MeasuredRun coarse = run(new Synthetic.Signal(t -> 48.004, 0.001, 0.0195), List.of());
    assertTrue(coarse.notes().stream().anyMatch(n -> n.contains("0.0195 V")), coarse.toString());
    MeasuredRun fine = run(new Synthetic.Signal(t -> 48.004, 0.02, 0.0195), List.of());
    assertTrue(fine.notes().stream().noneMatch(n -> n.contains("step of")), fine.toString());
  }

  @Test
  void aGapInTheWindowLeavesNothingThatWasReadThere() {
    MeasuredRun run = run(new Synthetic.Signal(t -> 48, 0.01, 0.005), List.of(gap(2.5)));
    MeasuredHold gapped = run.holds().get(1);
    gapped
        .readings()
        .forEach((q, reading) -> assertInstanceOf(Reading.NotMeasured.class, reading, q.id()));
    assertInstanceOf(Reading.NotMeasured.class, gapped.feeds().get(0).lowestMedian());
    assertTrue(run.holds().get(0).value(Quantity.OUTPUT).isPresent());
    assertTrue(run.holds().get(2).value(Quantity.OUTPUT).isPresent());
  }

  @Test
  void aGapBeforeTheWindowLeavesItsReadingsAndIsSaid() {
    MeasuredRun run = run(new Synthetic.Signal(t -> 48, 0.01, 0.005), List.of(gap(2.05)));
    MeasuredHold hold = run.holds().get(1);
    assertTrue(hold.value(Quantity.OUTPUT).isPresent());
    Reading.Measured lowest =
        assertInstanceOf(Reading.Measured.class, hold.feeds().get(0).lowestMedian());
    assertEquals(1, lowest.flags().size());
    assertInstanceOf(Reading.NotMeasured.class, hold.readings().get(Quantity.UNDERSHOOT));
    assertInstanceOf(Reading.NotMeasured.class, hold.readings().get(Quantity.ESR));
  }

  private static Capture.Gap gap(double at_s) {
    return new Capture.Gap((int) (at_s * RATE), 50);
  }

  private static long clips(MeasuredRun run) {
    return run.notes().stream().filter(n -> n.contains("clipped")).count();
  }

  private static MeasuredRun run(Synthetic.Signal output, List<Capture.Gap> gaps) {
    double[] starts = Synthetic.every(2, 3);
    Capture whole =
        Synthetic.capture(
            RATE,
            6,
            new Synthetic.Signal(
                Synthetic.steps(starts, new double[] {0, 1, 2}, 1e-9), 0.002, 0.001),
            output,
            Synthetic.exactly(12),
            3);
    Capture capture =
        new Capture(RATE, whole.output(), whole.load(), whole.feeds(), whole.inputCurrent(), gaps);
    return RunMeter.read(
        capture,
        new MeterSettings(Optional.of(0.2), Optional.of(0.02), Optional.of(48.0), Map.of()));
  }
}
