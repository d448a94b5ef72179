package corewright.measures.statistics;

/** A model y = f(x; p) whose parameters are to be fitted. */
public interface Curve {

  double at(double x, double[] p);

  /** Partial derivatives of {@link #at} by each parameter. */
  double[] gradient(double x, double[] p);
}
