package corewright.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Capture;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TraceTest {
  @Test
  void theOneLowSampleOfAMillionIsDrawn() {
    int[] codes = new int[1_000_000];
    java.util.Arrays.fill(codes, 480);
    codes[654_321] = 430;
    Trace trace = Trace.of(wave(codes), 100_000, List.of(), 0, 10, 900);
    assertEquals(43.0, trace.lowest(), 1e-12);
    assertEquals(48.0, trace.highest(), 1e-12);
    int column = 654_321 * 900 / 1_000_000;
    assertEquals(43.0, trace.low(column), 1e-12);
    assertEquals(6.54321, trace.time_s(column), 10.0 / 900);
  }

  @Test
  void aColumnShowsTheMeanOfItsSamples() {
    int[] codes = IntStream.range(0, 100).toArray();
    Trace trace = Trace.of(wave(codes), 100, List.of(), 0, 1, 10);
    assertEquals(0.45, trace.mean(0), 1e-12); // mean of 0…9 is 4.5, by hand
    assertEquals(0.0, trace.low(0), 1e-12);
    assertEquals(0.9, trace.high(0), 1e-12);
    assertEquals(9.45, trace.mean(9), 1e-12);
  }

  @Test
  void missingSamplesAreNotDrawn() {
    Trace trace = Trace.of(wave(new int[100]), 100, List.of(new Capture.Gap(35, 10)), 0, 1, 10);
    assertTrue(Double.isNaN(trace.mean(3)) && Double.isNaN(trace.mean(4)));
    assertEquals(0, trace.mean(2));
    assertEquals(0, trace.mean(5));
  }

  @Test
  void timeOutsideTheRecordIsEmptyAndFewSamplesFillEveryColumn() {
    Trace trace = Trace.of(wave(new int[] {1, 2, 3, 4}), 4, List.of(), -1, 2, 30);
    assertTrue(Double.isNaN(trace.mean(0)) && Double.isNaN(trace.mean(9)));
    assertEquals(0.1, trace.mean(10), 1e-12);
    assertEquals(0.4, trace.mean(19), 1e-12);
    assertTrue(Double.isNaN(trace.mean(20)));
  }

  private static Waveform wave(int[] codes) {
    return Waveform.ofCodes(codes, 0.1, 0, Unit.VOLT);
  }
}
