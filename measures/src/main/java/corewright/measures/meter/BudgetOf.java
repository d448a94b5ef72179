package corewright.measures.meter;

import corewright.measures.Unit;
import corewright.measures.uncertainty.Budget;
import corewright.measures.uncertainty.Distribution;
import corewright.measures.uncertainty.Input;
import corewright.measures.uncertainty.Inputs;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the uncertainty of a steady level or of a droop is made of, source by source. The result is
 * that of the reading: the same parts, named.
 */
final class BudgetOf {
  private BudgetOf() {}

  /** A level that stands by itself: gain and offset count whole. */
  static Budget level(Channel channel, Level level) {
    List<Input> inputs = new ArrayList<>(parts("", channel, level));
    double[] sensitivities = ones(5);
    inputs.add(gain(channel));
    sensitivities[3] = level.mean();
    inputs.add(offset(channel));
    return budget(channel, level.mean(), inputs, sensitivities);
  }

  /** The difference of two levels of one channel: the offset cancels, gain acts on the rest. */
  static Budget droop(Channel channel, Level unloaded, Level loaded) {
    List<Input> inputs = new ArrayList<>(parts(", no load", channel, unloaded));
    inputs.addAll(parts(", loaded", channel, loaded));
    double[] sensitivities = {1, 1, 1, -1, -1, -1, unloaded.mean() - loaded.mean(), 0};
    inputs.add(gain(channel));
    inputs.add(offset(channel));
    return budget(channel, unloaded.mean() - loaded.mean(), inputs, sensitivities);
  }

  private static Budget budget(
      Channel channel, double value, List<Input> inputs, double[] sensitivities) {
    return Budget.of(value, channel.wave().unit(), Inputs.of(inputs, List.of()), sensitivities);
  }

  private static List<Input> parts(String where, Channel channel, Level level) {
    Unit unit = channel.wave().unit();
    double worth = level.scatter().effectiveCount();
    return List.of(
        Input.known("mean of samples" + where, level.mean(), level.scatter().ofMean(), unit)
            .withFreedom(Math.max(1, worth - 1)),
        rectangular("resolution" + where, level.rounding(), unit),
        rectangular("ends of the window" + where, level.sampling(), unit));
  }

  private static Input rectangular(String name, double u, Unit unit) {
    return Input.within(name, 0, u * Math.sqrt(3), Distribution.RECTANGULAR, unit);
  }

  private static Input gain(Channel channel) {
    return Input.known("gain", 1, channel.doubt().gain_rel(), Unit.ONE);
  }

  private static Input offset(Channel channel) {
    return Input.known("offset", 0, channel.doubt().offset(), channel.wave().unit());
  }

  private static double[] ones(int count) {
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    return ones;
  }
}
