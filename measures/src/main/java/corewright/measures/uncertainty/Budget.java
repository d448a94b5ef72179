package corewright.measures.uncertainty;

import corewright.measures.Measurement;
import corewright.measures.Unit;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * A result and what its uncertainty is made of: the law of propagation, first order. Where the
 * model bends over an uncertainty, or an input's is not known by its variance alone, {@link
 * MonteCarlo} tells how far this is off.
 *
 * @see "JCGM 100:2008, 5.1 and 5.2 (combined standard uncertainty), 6.2 and annex G (coverage)"
 */
public final class Budget {
  /** Student's t is the normal's to a millionth here, and its series loses digits further on. */
  private static final double AS_GOOD_AS_KNOWN = 1e6;

  private final Inputs inputs;
  private final double[] sensitivities;
  private final Measurement result;

  private Budget(Inputs inputs, double[] sensitivities, double value, Unit unit) {
    this.inputs = inputs;
    this.sensitivities = sensitivities;
    this.result = new Measurement(value, Math.sqrt(variance(inputs, sensitivities)), unit);
  }

  /**
   * From sensitivities that are known, for example by hand.
   *
   * @param sensitivities ∂result/∂input, in the order of the inputs
   */
  public static Budget of(double value, Unit unit, Inputs inputs, double... sensitivities) {
    if (sensitivities.length != inputs.size()) {
      throw new IllegalArgumentException(
          sensitivities.length + " sensitivities for " + inputs.size() + " inputs");
    }
    return new Budget(inputs, sensitivities.clone(), value, unit);
  }

  /** From the model itself; sensitivities are its slopes at the estimates. */
  public static Budget of(Model model, Unit unit, Inputs inputs) {
    double[] x = inputs.values();
    double[] slopes = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      slopes[i] = slope(model, x, i, inputs.get(i).u());
    }
    return new Budget(inputs, slopes, model.at(x), unit);
  }

  /** A result as a function of its inputs, in their order. */
  @FunctionalInterface
  public interface Model {
    double at(double... x);
  }

  /** Five points a quarter of u apart: exact for polynomials up to the fourth degree. */
  private static double slope(Model model, double[] x, int i, double u) {
    if (u == 0) {
      return 0; // contributes nothing, whatever it is
    }
    double h = u / 4;
    double inner = difference(model, x, i, h);
    double outer = difference(model, x, i, 2 * h);
    return (8 * inner - outer) / (12 * h);
  }

  private static double difference(Model model, double[] x, int i, double h) {
    double[] above = x.clone();
    double[] below = x.clone();
    above[i] += h;
    below[i] -= h;
    return model.at(above) - model.at(below);
  }

  private static double variance(Inputs inputs, double[] c) {
    return Math.max(0, covariance(inputs, c, c));
  }

  private static double covariance(Inputs inputs, double[] c, double[] d) {
    double sum = 0;
    for (int i = 0; i < inputs.size(); i++) {
      for (int j = 0; j < inputs.size(); j++) {
        sum += c[i] * inputs.get(i).u() * inputs.correlation(i, j) * d[j] * inputs.get(j).u();
      }
    }
    return sum;
  }

  /** Value with combined standard uncertainty. */
  public Measurement result() {
    return result;
  }

  public Inputs inputs() {
    return inputs;
  }

  public double sensitivity(int i) {
    return sensitivities[i];
  }

  /** Contribution of one input, in the unit of the result: |sensitivity|·u. */
  public double contribution(int i) {
    return Math.abs(sensitivities[i]) * inputs.get(i).u();
  }

  /**
   * Covariance with another result of the same inputs.
   *
   * @see "JCGM 100:2008, H.2.3, equation H.9"
   */
  public double covariance(Budget other) {
    if (other.inputs != inputs) {
      throw new IllegalArgumentException("the two results do not depend on the same inputs");
    }
    return covariance(inputs, sensitivities, other.sensitivities);
  }

  public double correlation(Budget other) {
    return covariance(other) / (result.u() * other.result.u());
  }

  /**
   * Effective degrees of freedom after Welch and Satterthwaite; infinite where every uncertainty is
   * taken as known. The formula is for independent inputs. Those that err together enter as one,
   * with the least degrees of freedom among them, which errs towards a wider interval.
   *
   * @see "JCGM 100:2008, G.4.1, equation G.2b"
   */
  public double effectiveFreedom() {
    int[] group = inputs.groups();
    double sum = 0;
    for (int g = 0; g < group.length; g++) {
      double[] part = new double[group.length];
      double freedom = Double.POSITIVE_INFINITY;
      for (int i = 0; i < group.length; i++) {
        if (group[i] == g) {
          part[i] = sensitivities[i];
          freedom = Math.min(freedom, inputs.get(i).freedom());
        }
      }
      double variance = variance(inputs, part);
      sum += variance * variance / freedom;
    }
    double all = result.u() * result.u();
    return sum == 0 ? Double.POSITIVE_INFINITY : all * all / sum;
  }

  /**
   * Coverage factor: Student's t for the effective degrees of freedom, rounded down.
   *
   * @param level for example 0.95
   * @see "JCGM 100:2008, G.4.1 note 1 and table G.2"
   */
  public double coverageFactor(double level) {
    double freedom = effectiveFreedom();
    double tail = (1 + level) / 2;
    if (freedom > AS_GOOD_AS_KNOWN) {
      return new NormalDistribution(null, 0, 1).inverseCumulativeProbability(tail);
    }
    return new TDistribution(null, Math.max(1, Math.floor(freedom)))
        .inverseCumulativeProbability(tail);
  }

  /** Expanded uncertainty: half-width of the interval at a level of confidence. */
  public double expanded(double level) {
    return coverageFactor(level) * result.u();
  }
}
