package corewright.bench.log.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * How a tool asks a vehicle: so many rounds a second, each channel a little later than the one
 * before, with jitter, noise, steps and lost rounds.
 *
 * @param rate_Hz rounds a second
 * @param skew whether the channels of a round are really asked one after the other
 * @param jitter share by which the time between rounds varies
 * @param lost share of the rounds that never come
 * @param supplyStep_V resolution of the supply, V
 * @param outputStep_V resolution of the output, V
 * @param noise_V standard deviation of the output, V
 */
public record Poll(
    double rate_Hz,
    boolean skew,
    double jitter,
    double lost,
    double supplyStep_V,
    double outputStep_V,
    double noise_V) {

  /** One round; times of the channels lie behind {@code t_s} where they are asked in turn. */
  public record Shot(
      double t_s, double[] at_s, double speed, double supply_V, double output_V, double fuel) {}

  public static Poll steady(double rate_Hz) {
    return new Poll(rate_Hz, false, 0, 0, 0.1, 0.1, 0.04);
  }

  public List<Shot> of(Vehicle vehicle, long seed) {
    Random random = new Random(seed);
    List<Shot> shots = new ArrayList<>();
    double period_s = 1 / rate_Hz;
    for (double t = 0;
        t < vehicle.length_s();
        t += period_s * (1 + jitter * (2 * random.nextDouble() - 1))) {
      double gap_s = skew ? period_s / 4 : 0;
      double[] at_s = {t, t + gap_s, t + 2 * gap_s, t + 3 * gap_s};
      double noise_V = noise_V() * random.nextGaussian();
      if (random.nextDouble() < lost) {
        continue;
      }
      shots.add(
          new Shot(
              t,
              at_s,
              Math.rint(vehicle.speed(at_s[0])),
              stepped(vehicle.supply_V(at_s[1]), supplyStep_V),
              stepped(vehicle.output_V(at_s[2]) + noise_V, outputStep_V),
              vehicle.fuel(at_s[3])));
    }
    return shots;
  }

  static double stepped(double value, double step) {
    return Math.rint(value / step) * step;
  }
}
