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
    List<double[]> used =
        points.stream().filter(p -> p[1] < FROM * first_V && p[1] > TO * first_V).toList();
    if (used.size() < LEAST_POINTS || first_V < LEAST_V) {
      return Optional.empty();
    }
    return Optional.of(
        Relaxation.towards(
            0,
            used.stream().mapToDouble(p -> p[0]).toArray(),
            used.stream().mapToDouble(p -> p[1]).toArray()));
  }
}
