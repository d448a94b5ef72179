package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OnePoleFilterTest {

  /** Of a sine the analogue filter leaves 1/√(1 + (f/b)²). */
  @ParameterizedTest
  @CsvSource({
    "0.01, 0.002",
    "0.01, 0.01",
    "0.01, 0.1",
    "0.05, 0.03",
    "0.1, 0.1",
    "0.2, 0.05",
    "0.2, 0.3"
  })
  void aSineIsLessByTheAnalogueGain(double bandwidth, double frequency) {
    int n = 20_000; // whole periods of each
    int[] codes = new int[2 * n];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (int) Math.round(1e6 * Math.sin(2 * Math.PI * frequency * i + 0.3));
    }
    Waveform wave = Waveform.ofCodes(codes, 1e-6, 5, Unit.VOLT);
    double squares = 0;
    for (double y : new OnePoleFilter(bandwidth).of(wave, 0, n, 2 * n)) {
      squares += (y - 5) * (y - 5);
    }
    double gain = 1 / Math.hypot(1, frequency / bandwidth);
    assertEquals(gain, Math.sqrt(2 * squares / n), 0.006 * gain);
  }

  @ParameterizedTest
  @CsvSource({"0.001", "0.2"})
  void aLevelStays(double bandwidth) {
    Waveform wave = Waveform.ofCodes(new int[1000], 1, 48, Unit.VOLT);
    assertEquals(48, new OnePoleFilter(bandwidth).of(wave, 0, 999, 1000)[0], 1e-12);
  }
}
