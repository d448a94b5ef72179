package corewright.bench.commission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A channel of which 3 mV rms are stated, and a zero within 4 mV. */
class NoiseFloorTest {
  private static final ChannelCalibration KNOWN =
      new ChannelCalibration("output", 0.001, 0.004, "K-88", Optional.of(0.003));

  @Test
  void asMuchAsIsStatedChangesNothing() {
    assertEquals(KNOWN, floor(0.003).in(KNOWN));
    assertEquals(Optional.empty(), floor(0.003).against(KNOWN));
  }

  /** 5 mV of which 3 are stated: √(5² − 3²) = 4 mV are not, beside the zero's 4 mV: 4·√2. */
  @Test
  void whatIsNotStatedIsAddedToTheZeroInQuadrature() {
    ChannelCalibration now = floor(0.005).in(KNOWN);
    assertEquals(0.004 * Math.sqrt(2), now.offset(), 1e-12);
    assertEquals(KNOWN.gain_rel(), now.gain_rel());
    assertEquals(Optional.empty(), floor(0.005).against(KNOWN));
  }

  @Test
  void moreThanThreeTimesAsMuchStopsTheBench() {
    String against = floor(0.012).against(KNOWN).orElseThrow();
    assertTrue(against.contains("12.00 ± 0.20 mV rms"), against);
    assertEquals(Optional.empty(), floor(0.0091).against(KNOWN)); // 9.1 ± 0.2 mV may be 9 mV
  }

  /** Scatter of a standard deviation: σ/√(2(n − 1)), JCGM 100, E.4.3; 20 001 samples, 0.5 %. */
  @Test
  void howWellItIsKnownFollowsFromTheCount() {
    Spread rest = new Spread(0, 0.003, 20_001, "V", 0.001, false);
    assertEquals(0.003 / 200, NoiseFloor.of("output", rest).u(), 1e-12);
  }

  private static NoiseFloor floor(double rms) {
    return new NoiseFloor("output", "V", rms, 0.0001);
  }
}
