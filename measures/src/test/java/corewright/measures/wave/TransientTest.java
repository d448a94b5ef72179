package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An exponential is inside a band of half-width b from τ·ln(depth/b) after the edge on. */
class TransientTest {
  private static final double RATE = 1e4;
  private static final double EDGE_S = 1e-3;
  private static final double TAU_S = 3.3e-3;
  private static final double LEVEL_V = 48;

  @ParameterizedTest
  @CsvSource({"2, 0.48", "2, 0.12", "-1.5, 0.48", "-1.5, 0.3", "0.4, 0.48"})
  void comesBackAtTheSampleThatTheFormulaSays(double depth_V, double band_V) {
    int[] codes = new int[400];
    for (int i = 0; i < codes.length; i++) {
      double since_s = i / RATE - EDGE_S;
      double away_V = since_s < -1e-9 ? 0 : depth_V * Math.exp(-since_s / TAU_S);
      codes[i] = (int) Math.round((LEVEL_V - away_V) * 1e6);
    }
    Waveform wave = Waveform.ofOwnCodes(codes, 1e-6, 0, Unit.VOLT);
    Transient read =
        Transient.of(
            wave, RATE, EDGE_S, 300, 400, new Transient.Settled(LEVEL_V, 0, 1e-6, 0, band_V));
    double crossing_s = TAU_S * Math.log(Math.abs(depth_V) / band_V);
    assertEquals(Math.max(0, Math.ceil(crossing_s * RATE) / RATE), read.recovery_s(), 1e-9);
    assertEquals(LEVEL_V - Math.max(0, depth_V), read.lowest(), depth_V > 0 ? 1e-6 : 1e-3);
    assertEquals(LEVEL_V - Math.min(0, depth_V), read.highest(), depth_V < 0 ? 1e-6 : 1e-3);
    if (depth_V > 0) {
      assertEquals(0, read.lowestAt_s(), 1e-9);
    }
  }
}
