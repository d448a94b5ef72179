package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SuppliedTest {
  private static final int N = 20_000;

  /** Closed form: 48 V · 2 A out of 12 V · 10 A is 80 %; at rest there is no efficiency. */
  @Test
  void powerOutOverPowerIn() {
    List<MeasuredHold> holds = holds(true);
    Measurement full = holds.get(1).value(Quantity.EFFICIENCY).orElseThrow();
    assertEquals(80, full.value(), 1e-9);
    assertEquals(10, holds.get(1).value(Quantity.INPUT_CURRENT).orElseThrow().value(), 1e-9);
    assertEquals(0.5, holds.get(0).value(Quantity.INPUT_CURRENT).orElseThrow().value(), 1e-9);
    assertInstanceOf(Reading.NotMeasured.class, holds.get(0).readings().get(Quantity.EFFICIENCY));
  }

  @Test
  void withoutTheCurrentThereIsNeither() {
    MeasuredHold full = holds(false).get(1);
    assertEquals(
        Reading.none("the input current was not recorded"),
        full.readings().get(Quantity.EFFICIENCY));
    assertEquals(
        Reading.none("the input current was not recorded"),
        full.readings().get(Quantity.INPUT_CURRENT));
  }

  private static List<MeasuredHold> holds(boolean withCurrent) {
    Capture capture =
        new Capture(
            10_000,
            wave(48, 48, Unit.VOLT),
            Optional.of(wave(0, 2, Unit.AMPERE)),
            List.of(new Capture.Feed("input", wave(12, 12, Unit.VOLT))),
            withCurrent ? Optional.of(wave(0.5, 10, Unit.AMPERE)) : Optional.empty(),
            List.of());
    return RunMeter.read(capture, MeterSettings.defaults()).holds();
  }

  private static Waveform wave(double before, double after, Unit unit) {
    int[] codes = new int[2 * N];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (int) Math.round((i < N ? before : after) / 0.001);
    }
    return Waveform.ofCodes(codes, 0.001, 0, unit);
  }
}
