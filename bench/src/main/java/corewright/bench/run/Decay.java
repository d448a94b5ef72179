package corewright.bench.run;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.storage.Capacitor;
import corewright.measures.trend.Relaxation;
import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fall of the output on the discharge resistor as an exponential: one that is much slower than
 * resistor and capacitor make it is no proof of a discharge, but of a broken path.
 *
 * @see "common practice, no source: more than twice the expected time constant"
 */
final class Decay {
  private static final double SLOWEST = 2;

  /** At first the converter still works, at last the input's capacitor feeds through the diode. */
  private static final double FROM = 0.95;

  private static final double TO = 0.4;

  /** One that does not fall towards 0 V within this is fed: part of where it began, and volts. */
  private static final double FED = 0.02;

  private static final double FED_V = 1;

  /** Scatter about the curve from which it is none, part of where it began. */
  private static final double BESIDE = 0.01;

  /** A fall of less than this part shows no curve. */
  private static final double CURVED = 0.1;

  private static final int LEAST_POINTS = 10;
  private static final double LEAST_V = 10;

  /** Standard uncertainty of resistor and of what the unit itself draws beside it, relative. */
  private static final double RESISTANCE_U = 0.07;

  private final double resistor_ohm;
  private final double expected_s;
  private final List<double[]> points = new ArrayList<>();
  private double first_V;

  /**
   * @param resistor_ohm that the fixture has
   */
  Decay(Family family, double resistor_ohm) {
    this.resistor_ohm = resistor_ohm;
    this.expected_s = family.capacitance_F() * resistor_ohm;
  }

  /** Another fall begins. */
  void begin() {
    points.clear();
    first_V = 0;
  }

  void add(FrameView view) {
    double output_V = Means.of(view, "output");
    first_V = Math.max(first_V, output_V);
    points.add(new double[] {view.at_s(0), output_V});
  }

  /** A sentence if it fell too slowly. */
  Optional<String> tooSlow() {
    return fit()
        .filter(f -> f.tau_s() - 2 * f.uTau_s() > SLOWEST * expected_s)
        .map(
            f ->
                "The output fell with a time constant of "
                    + Figures.withU(new Measurement(f.tau_s(), f.uTau_s(), Unit.SECOND))
                    + ", and the discharge resistor makes it fall with about "
                    + Figures.number(expected_s, 2)
                    + " s: the discharge path is not what is described.");
  }

  /**
   * A sentence if it does not fall towards 0 V, or on no curve: something else feeds the output.
   */
  Optional<String> fed() {
    List<double[]> used = used();
    double least_V = used.stream().mapToDouble(p -> p[1]).min().orElse(first_V);
    double most_V = used.stream().mapToDouble(p -> p[1]).max().orElse(first_V);
    if (used.size() < LEAST_POINTS || most_V - least_V < CURVED * first_V) {
      return Optional.empty();
    }
    Relaxation free = Relaxation.of(times(used), volts(used));
    if (free.residualSd() > BESIDE * first_V) {
      return Optional.of(
          "The output does not fall as a capacitor does on a resistor: it lies about "
              + Figures.number(free.residualSd(), 2)
              + " V beside the curve.");
    }
    boolean towardsZero = free.end() - 2 * free.uEnd() <= Math.max(FED_V, FED * first_V);
    return towardsZero
        ? Optional.empty()
        : Optional.of(
            "The output falls towards "
                + Figures.withU(new Measurement(free.end(), free.uEnd(), Unit.VOLT))
                + " and not towards 0 V: something feeds it.");
  }

  /** What the output holds, by its fall. */
  Reading capacitance() {
    return fit()
        .<Reading>map(
            f ->
                new Reading.Measured(
                    Capacitor.fromDecay(
                            f, new Measurement(resistor_ohm, RESISTANCE_U * resistor_ohm, Unit.OHM))
                        .result(),
                    List.of()))
        .orElse(Reading.none("the output did not fall far enough to tell."));
  }

  private Optional<Relaxation> fit() {
    List<double[]> used = used();
    if (used.size() < LEAST_POINTS || first_V < LEAST_V) {
      return Optional.empty();
    }
    return Optional.of(Relaxation.towards(0, times(used), volts(used)));
  }

  private List<double[]> used() {
    return points.stream().filter(p -> p[1] < FROM * first_V && p[1] > TO * first_V).toList();
  }

  private static double[] times(List<double[]> used) {
    return used.stream().mapToDouble(p -> p[0]).toArray();
  }

  private static double[] volts(List<double[]> used) {
    return used.stream().mapToDouble(p -> p[1]).toArray();
  }
}
