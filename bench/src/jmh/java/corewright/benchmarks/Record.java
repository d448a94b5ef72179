package corewright.benchmarks;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.code.Codes;
import java.util.Arrays;
import java.util.Random;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Output and load of a unit under stepped load: 16 holds of 250,000 samples, always the same. */
@State(Scope.Benchmark)
public class Record {
  static final int HOLD = 250_000;
  static final int HOLDS = 16;
  static final int SETTLE = HOLD / 5;
  static final double LSB_V = 80 / 32768.0;
  static final double BAND = 0.48 / LSB_V;

  /** 0.2 A, in codes. */
  static final int THRESHOLD = 1310;

  private static final double[] LEVELS_A = {0, 0.5, 1, 2, 3, 2, 1, 0.5};

  final short[] raw = new short[HOLD * HOLDS];
  final Codes output;
  final Codes load;
  final Waveform volts;
  final Waveform amps;

  public Record() {
    Random random = new Random(1);
    short[] current = new short[raw.length];
    double before = 0;
    for (int i = 0; i < raw.length; i++) {
      int hold = i / HOLD;
      double level = LEVELS_A[hold % LEVELS_A.length];
      before = hold == 0 ? 0 : LEVELS_A[(hold - 1) % LEVELS_A.length];
      double dip = 0.8 * (level - before) * Math.exp(-(i % HOLD) / 800.0);
      double ripple = 0.08 * Math.sin(2 * Math.PI * 0.1003 * i);
      double volts = 48 - 0.03 * level + ripple - dip + 0.02 * random.nextGaussian();
      raw[i] = (short) Math.round(volts / LSB_V);
      current[i] = (short) Math.round((level + 0.004 * random.nextGaussian()) / 5 * 32768);
    }
    output = Codes.of(raw);
    load = Codes.of(current);
    volts = wave(raw, LSB_V, Unit.VOLT);
    amps = wave(current, 5 / 32768.0, Unit.AMPERE);
  }

  private static Waveform wave(short[] codes, double lsb, Unit unit) {
    int[] wide = new int[codes.length];
    Arrays.setAll(wide, i -> codes[i]);
    return Waveform.ofOwnCodes(wide, lsb, 0, unit);
  }
}
