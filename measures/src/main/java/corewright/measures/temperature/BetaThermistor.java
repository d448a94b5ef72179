package corewright.measures.temperature;

/**
 * NTC thermistor by two numbers of a data sheet: R = r25·exp(beta·(1/T − 1/298.15 K)). Good to a
 * few tenths of a degree near the two temperatures that beta was taken from, to some degrees 60 °C
 * away.
 *
 * @param r25_ohm at 25 °C
 * @param beta_K material constant, K
 */
public record BetaThermistor(double r25_ohm, double beta_K) {
  private static final double T25_K = 25 + SteinhartHart.ZERO_CELSIUS_K;

  public BetaThermistor {
    if (!(r25_ohm > 0) || !(beta_K > 0)) {
      throw new IllegalArgumentException(
          "an NTC has a resistance and a beta above 0, not " + r25_ohm + " and " + beta_K);
    }
  }

  public double resistance_ohm(double temperature_C) {
    double inverse = 1 / (temperature_C + SteinhartHart.ZERO_CELSIUS_K) - 1 / T25_K;
    return r25_ohm * Math.exp(beta_K * inverse);
  }

  public double temperature_C(double resistance_ohm) {
    if (!(resistance_ohm > 0) || Double.isInfinite(resistance_ohm)) {
      throw new IllegalArgumentException(
          resistance_ohm + " Ω is no temperature of a thermistor: open or shorted?");
    }
    return 1 / (1 / T25_K + Math.log(resistance_ohm / r25_ohm) / beta_K)
        - SteinhartHart.ZERO_CELSIUS_K;
  }
}
