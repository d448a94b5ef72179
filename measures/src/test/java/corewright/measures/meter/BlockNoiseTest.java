package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.ChannelDoubt;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.wave.Resolution;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * White noise of a known deviation on a slope with two steps: σ of one, σ/√n of a block's mean.
 * Steps of the channel that are wider than twice σ hide a tenth of it.
 */
class BlockNoiseTest {
  @ParameterizedTest
  @CsvSource({"1, 0.02, 0.001", "1, 0.02, 0.02", "1, 0.008, 0.02", "25, 0.02, 0.001"})
  void slopesAndStepsAreNotNoise(int size, double noise, double lsb) {
    Random random = new Random(3);
    int[] codes = new int[20_000];
    for (int i = 0; i < codes.length; i++) {
      double level = 48 - 1e-4 * i - (i > 6000 && i < 9000 ? 1 : 0);
      codes[i] = (int) Math.round((level + noise * random.nextGaussian()) / lsb);
    }
    Channel channel =
        new Channel(
            Waveform.ofCodes(codes, lsb, 0, Unit.VOLT),
            1000,
            ChannelDoubt.UNKNOWN,
            new Resolution(lsb));
    double rounded = Math.sqrt((noise * noise + lsb * lsb / 12) / size);
    assertEquals(rounded, BlockNoise.of(channel, 0, codes.length, size), 0.12 * rounded);
  }
}
