package corewright.measures.meter;

/** Combines uncorrelated standard uncertainties: the root of the sum of their squares. */
final class Root {
  private Root() {}

  static double of(double... parts) {
    double squares = 0;
    for (double part : parts) {
      squares += part * part;
    }
    return Math.sqrt(squares);
  }
}
