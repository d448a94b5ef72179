package corewright.measures.spectrum;

/**
 * Cosine and sine of ω(i − centre) for i = 0, 1, 2 … in turn. Each is the last one turned on, which
 * is ten times as fast as the functions and, begun anew often enough, as exact to some 10⁻¹⁴.
 */
final class Turning {
  private static final int ANEW = 256;

  private final double omega;
  private final double centre;
  private final double stepCos;
  private final double stepSin;
  private double cos;
  private double sin;

  Turning(double omega, double centre) {
    this.omega = omega;
    this.centre = centre;
    stepCos = Math.cos(omega);
    stepSin = Math.sin(omega);
  }

  /** Turns on to the next; {@code i} counts from 0. */
  void to(int i) {
    if (i % ANEW == 0) {
      cos = Math.cos(omega * (i - centre));
      sin = Math.sin(omega * (i - centre));
    } else {
      double turned = cos * stepCos - sin * stepSin;
      sin = cos * stepSin + sin * stepCos;
      cos = turned;
    }
  }

  double cos() {
    return cos;
  }

  double sin() {
    return sin;
  }
}
