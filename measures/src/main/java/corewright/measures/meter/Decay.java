package corewright.measures.meter;

import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.statistics.LinearFit;
import java.util.Optional;

/**
 * Capacitance from an output that falls while nothing feeds it: after the input went away, or after
 * the load went away and the output stands above its regulated level. The line of the voltage over
 * the charge that has flowed out, through the load and through what discharges it.
 *
 * @param feed the first supply feed
 * @param reference_V the regulated output at no load
 * @param inputHigh_V highest mean of the input in the run
 * @param discharge_ohm bleeder and discharge resistor together, where known
 */
record Decay(
    Channel output,
    Optional<Channel> load,
    Channel feed,
    double reference_V,
    double inputHigh_V,
    Optional<Double> discharge_ohm) {
  private static final int MOST_BLOCKS = 200;
  private static final int FEWEST_BLOCKS = 8;
  private static final double OFF_PART = 0.5;

  /** Above its level by this part of it the output is not regulated downwards. */
  private static final double ABOVE_PART = 0.005;

  /** The resistance is known to about 2 % (k = 2): the tolerance of such parts. */
  private static final double RESISTANCE_REL = 0.01;

  /** Scatter of block means is not independent where ripple beats with the blocks. */
  private static final double CORRELATED = 4;

  void read(Window window, Readings into) {
    into.put(Quantity.CAPACITANCE_FROM_DECAY, reading(window));
  }

  private Reading reading(Window window) {
    boolean off = feed.level(window).mean() < OFF_PART * inputHigh_V;
    double floor = off ? 0.1 * output.wave().at(window.from()) : reference_V * (1 + ABOVE_PART);
    int to = window.from();
    while (to < window.to() && output.wave().at(to) > floor) {
      to++;
    }
    int block = Math.max(1, (to - window.from()) / MOST_BLOCKS);
    int blocks = (to - window.from()) / block;
    if (blocks < FEWEST_BLOCKS || mean(window.from(), block) <= mean(to - block, block)) {
      return Reading.none("the output does not fall by itself in this hold");
    }
    if (discharge_ohm.isEmpty()) {
      return Reading.none(
          "not measurable: it is not known what resistance the output is discharged through");
    }
    double[] charge = new double[blocks];
    double[] voltage = new double[blocks];
    double length_s = block / output.sampleRate_Hz();
    double sum = 0;
    double was_A = 0;
    for (int b = 0; b < blocks; b++) {
      int from = window.from() + b * block;
      voltage[b] = mean(from, block);
      double now_A = voltage[b] / discharge_ohm.get() + drawn_A(from, block);
      sum += b == 0 ? 0 : (now_A + was_A) / 2 * length_s;
      was_A = now_A;
      charge[b] = sum;
    }
    LinearFit line = LinearFit.line(charge, voltage);
    double perCharge = -line.coefficient(1);
    if (!(perCharge > 0)) {
      return Reading.none("the output does not fall by itself in this hold");
    }
    double rounding = output.resolution().ofOne() / (voltage[0] - voltage[blocks - 1]);
    double u =
        Root.of(
            Math.sqrt(CORRELATED) * line.u(1) / perCharge,
            rounding,
            RESISTANCE_REL,
            output.doubt().gain_rel());
    return Storage.told(1 / perCharge, u / perCharge, Unit.FARAD);
  }

  private double mean(int from, int count) {
    double sum = 0;
    for (int i = from; i < from + count; i++) {
      sum += output.wave().at(i) / count;
    }
    return sum;
  }

  private double drawn_A(int from, int count) {
    if (load.isEmpty()) {
      return 0;
    }
    double sum = 0;
    for (int i = from; i < from + count; i++) {
      sum += load.get().wave().at(i) / count;
    }
    return sum;
  }
}
