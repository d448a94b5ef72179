package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.pulse.Transition;
import corewright.measures.wave.NoisyExtreme;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/**
 * How the unit starts: the output's rise and overshoot (IEC 60469), the inrush of its input
 * current. Only where the record begins with the output down and has it come up.
 *
 * @param nominal_V what the output comes up to
 */
record Start(Channel output, Optional<Channel> inputCurrent, double nominal_V) {
  /** Down: below this part of nominal. A boost converter that rests lets the input through. */
  private static final double DOWN_PART = 0.5;

  static final double UP_PART = 0.95;

  /** The start is over this many rise times after the output is up. */
  static final double AFTERWARDS = 3;

  /** Samples: short beside a start, long beside what correlates noise. */
  private static final int BLOCK = 16;

  /** Coverage factor that turns the half-width of a 95 % interval into what stands for u. */
  private static final double K = 2;

  void read(Map<Quantity, Reading> into) {
    int n = output.wave().size();
    int up = 0;
    while (up < n && output.wave().at(up) < UP_PART * nominal_V) {
      up++;
    }
    if (output.wave().at(0) > DOWN_PART * nominal_V || up == n) {
      none("the record does not show the unit starting", into);
      return;
    }
    double[] x = new double[Math.min(n, (int) Math.min(Integer.MAX_VALUE, 4L * up + 16))];
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      x[i] = output.wave().at(i);
      highest = Math.max(highest, x[i]);
    }
    double rate = output.sampleRate_Hz();
    Transition rise;
    try {
      rise = Transition.of(x, rate, x[0], nominal_V);
    } catch (IllegalArgumentException notWhole) {
      none("the record does not show the whole of the start", into);
      return;
    }
    double noise = BlockNoise.of(output, 0, x.length, 1);
    double way = nominal_V - x[0];
    double u10 = Crossing.of(x, up, x[0] + 0.1 * way, noise).u();
    double u90 = Crossing.of(x, up, x[0] + 0.9 * way, noise).u();
    double uRise = Root.of(u10, u90) / rate;
    into.put(Quantity.START_RISE, Reading.of(rise.duration_s(), uRise, Unit.SECOND));
    into.put(
        Quantity.START_OVERSHOOT,
        measured(output.difference(highest - nominal_V, ofHighest(output, x, noise))));
    int end = (int) Math.min(n, up + AFTERWARDS * rise.duration_s() * rate);
    // The sample that is up comes up to one late, the last one counted up to one early.
    double uUp = Crossing.of(x, x.length, UP_PART * nominal_V, noise).u();
    double uUp_s = Root.of(1 / Math.sqrt(6), uUp) / rate;
    inrush(end, Root.of(uUp_s, AFTERWARDS * uRise), into);
  }

  /** What noise and rounding leave in the highest of all samples. */
  private static double ofHighest(Channel channel, double[] x, double noise) {
    int sharing = NoisyExtreme.sharing(i -> x[i], x.length, noise, 1, -1);
    return Root.of(NoisyExtreme.halfWidth(noise, sharing, 1) / K, channel.resolution().ofOne());
  }

  private void inrush(int end, double uEnd_s, Map<Quantity, Reading> into) {
    if (inputCurrent.isEmpty()) {
      Reading none = Reading.none("the input current was not recorded");
      into.put(Quantity.INRUSH, none);
      into.put(Quantity.INRUSH_I2T, none);
      return;
    }
    Channel current = inputCurrent.get();
    double rate = current.sampleRate_Hz();
    double highest = 0;
    double squares = 0;
    double sum = 0;
    double jump = 0;
    for (int i = 0; i < end; i++) {
      double now = current.wave().at(i);
      highest = Math.max(highest, now);
      double last = current.wave().at(Math.max(0, i - 1));
      double next = current.wave().at(Math.min(end - 1, i + 1));
      jump = Math.max(jump, Math.abs(last * last - 2 * now * now + next * next));
      squares += now * now / rate;
      sum += now / rate;
    }
    double[] x = new double[end];
    Arrays.setAll(x, current.wave()::at);
    double u = ofHighest(current, x, BlockNoise.of(current, 0, end, 1));
    into.put(Quantity.INRUSH, measured(current.absolute(highest, u)));
    into.put(Quantity.INRUSH_I2T, i2t(current, end, squares, sum, jump / rate, uEnd_s));
  }

  /**
   * ∫i² dt of the record as it stands. In U: where a jump lies between two samples; ∂/∂gain = 2∫i²,
   * ∂/∂offset = 2∫i, ∂/∂noise = 2i for each sample, ∂/∂end = i² there (JCGM 100, 5.1.2); noise with
   * a spectrum that rises to low frequencies by what it does in blocks, once the inrush is over.
   * The squares of noise add up; since ripple that the unit draws looks the same and is rightly in
   * it, that is not corrected, and in U as it is (F.2.4.5).
   */
  private static Reading i2t(
      Channel current, int end, double squares, double sum, double jump, double uEnd_s) {
    double rate = current.sampleRate_Hz();
    double noise = BlockNoise.of(current, 0, end, 1);
    double ofBlock = BlockNoise.of(current, end / 2, end, BLOCK) * Math.sqrt(BLOCK);
    double length_s = end / rate;
    // Noise that rounding hides has no square to be known of.
    double own = noise > current.resolution().ofOne() ? noise * noise * length_s : 0;
    double last = Level.of(current, Math.max(0, end - BLOCK), end).mean();
    double u =
        Root.of(
            2 * squares * current.doubt().gain_rel(),
            2 * sum * current.doubt().offset(),
            2 * Math.max(noise, ofBlock) * Math.sqrt(squares / rate),
            jump / Math.sqrt(12),
            last * last * uEnd_s);
    return Reading.of(squares, u + own / K, Unit.AMPERE_SQUARED_SECOND);
  }

  private static Reading measured(Measurement m) {
    return Reading.of(m.value(), m.u(), m.unit());
  }

  private static void none(String reason, Map<Quantity, Reading> into) {
    into.put(Quantity.START_RISE, Reading.none(reason));
    into.put(Quantity.START_OVERSHOOT, Reading.none(reason));
    into.put(Quantity.INRUSH, Reading.none(reason));
    into.put(Quantity.INRUSH_I2T, Reading.none(reason));
  }
}
