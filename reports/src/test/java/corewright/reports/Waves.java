package corewright.reports;

import corewright.measures.Capture;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Hand-made captures of a stepped load: 0, 0.5, 1, 2 and 0 A, 4 s each. */
public final class Waves {
  public static final double RATE_HZ = 10_000;
  public static final double HOLD_S = 4;
  private static final double[] LOADS = {0, 0.5, 1, 2, 0};

  private Waves() {}

  public static double load_A(double t) {
    return LOADS[(int) Math.min(LOADS.length - 1, t / HOLD_S)];
  }

  public static double end_s() {
    return LOADS.length * HOLD_S;
  }

  public static Capture good() {
    return capture(t -> 48.02 - 0.2 * load_A(t), Waves::stiff);
  }

  /** Falls towards 43 V at full load. */
  public static Capture weak() {
    return capture(t -> 48.02 - 0.2 * load_A(t) - fall(t, 4.6, 0.8), Waves::stiff);
  }

  public static Capture marginal() {
    return capture(t -> 48.02 - 0.2 * load_A(t) - fall(t, 1.2, 0.3), Waves::stiff);
  }

  /** Restarts again and again at full load: from 48 V to 11 V and back. */
  public static Capture hiccup() {
    return capture(
        t -> load_A(t) < 2 || (t % 0.5) < 0.1 ? 48 - 0.2 * load_A(t) : 11.4, Waves::stiff);
  }

  /** A good unit on a supply that falls at 13.31 s. */
  public static Capture sagging() {
    return capture(
        t -> 48.02 - 0.2 * load_A(t),
        t ->
            stiff(t)
                - (Math.abs(t - 13.31) < 0.25 ? 3.0 * Math.cos((t - 13.31) * 2 * Math.PI) : 0));
  }

  private static double stiff(double t) {
    return 12.5 - 0.9 * load_A(t);
  }

  private static double fall(double t, double depth_V, double tau_s) {
    double since = t - 3 * HOLD_S;
    return load_A(t) < 2 ? 0 : depth_V * (1 - Math.exp(-since / tau_s));
  }

  /** Noise of 12 mV on the output and dips of 0.7 V, 27 a second, while it is loaded. */
  private static Capture capture(DoubleUnaryOperator output, DoubleUnaryOperator input) {
    int n = (int) (end_s() * RATE_HZ);
    Random random = new Random(5);
    int[] out = new int[n];
    int[] in = new int[n];
    int[] load = new int[n];
    for (int i = 0; i < n; i++) {
      double t = i / RATE_HZ;
      double pulse = (t * 27) % 1 < 0.02 && load_A(t) > 0 ? 0.7 * load_A(t) : 0;
      out[i] =
          (int)
              Math.round((output.applyAsDouble(t) - pulse + random.nextGaussian() * 0.012) / 0.002);
      in[i] = (int) Math.round((input.applyAsDouble(t) + random.nextGaussian() * 0.01) / 0.001);
      load[i] = (int) Math.round((load_A(t) + random.nextGaussian() * 0.002) / 0.0005);
    }
    return new Capture(
        RATE_HZ,
        Waveform.ofCodes(out, 0.002, 0, Unit.VOLT),
        Optional.of(Waveform.ofCodes(load, 0.0005, 0, Unit.AMPERE)),
        List.of(new Capture.Feed("input", Waveform.ofCodes(in, 0.001, 0, Unit.VOLT))),
        Optional.empty(),
        List.of());
  }
}
