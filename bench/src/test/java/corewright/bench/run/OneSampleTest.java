package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.port.Digitizer;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The sums are done by hand, after JCGM 100, 5.1.2, with k = 2. */
class OneSampleTest {
  private final OneSample sample =
      new OneSample(
          described(
              new ChannelCalibration("output", 5e-4, 0.012, "C 17", Optional.of(0.005)),
              new ChannelCalibration("input", 5e-4, 0.004, "C 17")));

  private static BenchDescription described(ChannelCalibration... channels) {
    BenchDescription b = Plans.bench();
    return new BenchDescription(
        b.id(),
        b.revision(),
        b.title(),
        b.instruments(),
        List.of(channels),
        b.fixture(),
        b.trip_s(),
        b.origin());
  }

  /** √(0.02805² + 0.012² + 0.005²) V = 0.0309 V, and √(0.0085² + 0.004²) V = 0.0094 V. */
  @Test
  void itsUIsOfGainOffsetAndStatedNoise() {
    assertEquals("56.10 ± 0.06 V", sample.words("output", 56.1, Unit.VOLT));
    assertEquals("17.000 ± 0.019 V", sample.words("input", 17, Unit.VOLT));
  }

  @Test
  void whatHasNoUSaysWhy() {
    assertEquals(
        "18.40 A (U not known: channel inputCurrent is not in the bench's file)",
        sample.words("inputCurrent", 18.4, Unit.AMPERE));
    assertEquals(
        "beyond the digitizer's range",
        sample.words("output", Double.POSITIVE_INFINITY, Unit.VOLT));
  }

  @Test
  void wordsThatCannotBeMadeHideNoTrip() {
    Trip.Seen seen =
        new Trip.Seen(
            RunEnd.Trip.OUTPUT_OVER,
            0,
            () -> {
              throw new IllegalStateException("no words");
            },
            "Find the cause.");
    Digitizer.Status good = new Digitizer.Status(true, true, false, false, false, false);
    Digitizer.Frame frame = new Digitizer.Frame(0, good, new short[1][1], 0);
    RunEnd end = seen.end(new FrameView(frame, List.of(), 0, 1000, 2, 0, true), "full");
    assertEquals(RunEnd.Trip.OUTPUT_OVER, end.trip());
    assertEquals("Find the cause.", end.remedy());
  }
}
