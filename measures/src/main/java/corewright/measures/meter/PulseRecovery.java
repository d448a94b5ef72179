package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.wave.PulseTrain.Pulse;
import corewright.measures.wave.Smoothing;
import java.util.List;

/**
 * How long after the end of each pulse the output stays more than 1 % of nominal below where it was
 * before the pulse: the median. The converter's ripple is averaged out over one of its periods.
 */
record PulseRecovery(Channel output, double period_s, double nominal_V) {
  private static final double BAND = 0.01;

  /** A longer period is no switching ripple, s. */
  private static final double LONGEST_PERIOD_S = 50e-6;

  Reading read(Window window, List<Pulse> pulses) {
    double rate = output.sampleRate_Hz();
    double width = period_s <= LONGEST_PERIOD_S ? period_s * rate : 0;
    int half = (int) Math.ceil(width / 2) + 1;
    double[] x = Smoothing.over(output.wave(), window.from(), window.to(), width);
    double[] took = new double[pulses.size() - 1];
    double late = 0;
    int open = 0;
    for (int p = 0; p < took.length; p++) {
      int end = pulses.get(p).to() - window.from();
      int next = pulses.get(p + 1).from() - window.from() - half;
      Pulse pulse = pulses.get(p);
      int begin = pulse.from() - pulse.length() / Pulsed.FOOT - window.from();
      double bound = x[Math.max(0, begin - half)] - BAND * nominal_V;
      int last = next - 1;
      while (last >= end && x[last] >= bound) {
        last--;
      }
      boolean back = last + 1 < next;
      open += back ? 0 : 1;
      took[p] = (last + 1 - end) / rate;
      double rise = back && next - 1 > last ? (x[next - 1] - x[last]) / (next - 1 - last) : 0;
      late += rise > 0 ? noise(x, end, next) / rise / took.length : 0;
    }
    Storage.Middle middle = Storage.Middle.of(took);
    double u_s = Root.of(middle.u(), (1 / Math.sqrt(6) + late) / rate);
    List<String> flags =
        open == 0
            ? List.of()
            : List.of("After " + open + " pulses the output was not back before the next one.");
    return new Reading.Measured(new Measurement(middle.median(), u_s, Unit.SECOND), flags);
  }

  /** Of one sample, from what neighbours differ by; rounding is in it, or is more. */
  private double noise(double[] x, int from, int to) {
    double squares = 0;
    for (int i = from + 1; i < to; i++) {
      squares += (x[i] - x[i - 1]) * (x[i] - x[i - 1]) / 2 / (to - from - 1);
    }
    return Math.max(Math.sqrt(squares), output.resolution().ofOne());
  }
}
