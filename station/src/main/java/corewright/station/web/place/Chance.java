package corewright.station.web.place;

import corewright.measures.Figures;

/** A probability as people read it: no figure claims to be certain. */
final class Chance {
  private static final double ALMOST = 0.99;

  private Chance() {}

  /** Two digits; {@code over 0.99} and {@code under 0.01} at the ends. */
  static String words(double probability) {
    if (probability > ALMOST) {
      return "over 0.99";
    }
    return probability < 1 - ALMOST ? "under 0.01" : Figures.number(probability, 2);
  }
}
