package corewright.measures.spectrum;

/**
 * How well any method can know a sine in white noise: the bound of Cramér and Rao, for many samples
 * and a frequency away from 0 and half the rate.
 *
 * @param frequency_Hz least standard uncertainty of the frequency
 * @param amplitude of the amplitude
 * @param phase_rad of the phase at the first sample
 * @see "Kay, Fundamentals of Statistical Signal Processing: Estimation Theory (1993), example 3.14
 *     (formulas from memory)"
 */
public record SineBound(double frequency_Hz, double amplitude, double phase_rad) {

  /**
   * @param amplitude peak value of the sine
   * @param noise standard deviation of the noise
   * @param count samples
   */
  public static SineBound of(double amplitude, double noise, int count, double sampleRate_Hz) {
    double n = count;
    double eta = amplitude * amplitude / (2 * noise * noise);
    double ofOmega = 12 / (eta * n * (n * n - 1));
    double ofPhase = 2 * (2 * n - 1) / (eta * n * (n + 1));
    return new SineBound(
        Math.sqrt(ofOmega) * sampleRate_Hz / (2 * Math.PI),
        noise * Math.sqrt(2 / n),
        Math.sqrt(ofPhase));
  }
}
