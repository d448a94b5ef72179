package corewright.measures.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StrongestLineTest {
  private static final double RATE = 1000;
  private static final int COUNT = 2048;

  /** Noise whose neighbours resemble each other is strongest at low frequencies. */
  @Test
  void colouredNoiseAloneHasNoLine() {
    int seen = 0;
    for (int seed = 0; seed < 200; seed++) {
      seen += line(0, 0.95, seed).standsOut() ? 1 : 0;
    }
    assertTrue(seen <= 4, seen + " of 200 records of noise have a line");
  }

  /** A sine of the noise's own rms, in white and in coloured noise: the frequency put in. */
  @Test
  void aLineIsFoundInBoth() {
    for (double alike : new double[] {0, 0.95}) {
      int within = 0;
      for (int seed = 0; seed < 200; seed++) {
        StrongestLine line = line(Math.sqrt(2), alike, 1000 + seed);
        assertTrue(line.standsOut());
        within += Math.abs(line.frequency_Hz() - 123.4) <= 2 * line.frequencyU_Hz() ? 1 : 0;
      }
      assertEquals(0.97, within / 200.0, 0.035, "95 % and a little more, alike " + alike);
    }
  }

  private static StrongestLine line(double amplitude, double alike, long seed) {
    Random random = new Random(seed * 7919);
    int[] codes = new int[COUNT];
    double noise = random.nextGaussian();
    for (int i = 0; i < COUNT; i++) {
      noise = alike * noise + Math.sqrt(1 - alike * alike) * random.nextGaussian();
      double sine = amplitude * Math.sin(2 * Math.PI * 123.4 * i / RATE);
      codes[i] = (int) Math.round((noise + sine) / 0.01);
    }
    Waveform wave = Waveform.ofCodes(codes, 0.01, 0, Unit.VOLT);
    return StrongestLine.find(wave, RATE, 0, COUNT, 0.8, 200).orElseThrow();
  }
}
