package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.pulse.Transition;
import corewright.measures.wave.Smoothing;
import java.util.List;

/**
 * The rise of a start again, through an average over a fiftieth of it: while the converter charges
 * its capacitor the ripple is large, and a single sample of it crosses a level too early.
 */
final class Rise {
  private static final double PART = 50;

  private Rise() {}

  /**
   * @param raw the rise as the samples stand; what the average changes is counted as uncertain
   * @param level_V where the output ends
   */
  static Reading of(Channel output, Measurement raw, double level_V) {
    double rate = output.sampleRate_Hz();
    double[] x = Smoothing.over(output.wave(), 0, output.wave().size(), raw.value() * rate / PART);
    try {
      double smooth_s = Transition.of(x, rate, x[0], level_V).duration_s();
      double u_s = Root.of(raw.u(), (raw.value() - smooth_s) / Math.sqrt(3));
      return new Reading.Measured(new Measurement(smooth_s, u_s, Unit.SECOND), List.of());
    } catch (IllegalArgumentException notWhole) {
      return new Reading.Measured(raw, List.of());
    }
  }
}
