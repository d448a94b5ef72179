package corewright.measures.spectrum;

import java.util.Optional;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The sine that fits a record best: a·cos(ωt) + b·sin(ωt) + offset, t = 0 at the first sample.
 *
 * @param frequency_Hz of the sine
 * @param a cosine part
 * @param b sine part
 * @param offset mean of the sine
 * @param rmsError root of the mean square of what remains, divided by the number of samples
 * @param count of samples
 * @param frequencyU_Hz standard uncertainty for white noise of the size of what remains; 0 where
 *     the frequency was given
 * @param amplitudeU standard uncertainty of {@link #amplitude}, likewise
 * @see "IEEE 1057, 4.1.4 three-parameter and four-parameter sine fit (clauses from memory)"
 */
public record SineFit(
    double frequency_Hz,
    double a,
    double b,
    double offset,
    double rmsError,
    int count,
    double frequencyU_Hz,
    double amplitudeU) {
  private static final int MOST_ITERATIONS = 60;

  /** At a known frequency. */
  public static SineFit atFrequency(double[] x, double sampleRate_Hz, double frequency_Hz) {
    require(x, 3, frequency_Hz);
    double omega = 2 * Math.PI * frequency_Hz / sampleRate_Hz;
    return result(x, sampleRate_Hz, omega, SineModel.three(x, omega), true);
  }

  /**
   * The frequency is fitted too.
   *
   * @param nearby_Hz within half a cycle over the record of the true one, as the largest bin of a
   *     spectrum is
   * @throws IllegalArgumentException if the fit runs away from there: no clean sine
   */
  public static SineFit near(double[] x, double sampleRate_Hz, double nearby_Hz) {
    return seek(x, sampleRate_Hz, nearby_Hz)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the record holds no clean sine near " + nearby_Hz + " Hz"));
  }

  /** The same; empty if the fit runs away. */
  public static Optional<SineFit> seek(double[] x, double sampleRate_Hz, double nearby_Hz) {
    require(x, 4, nearby_Hz);
    double start = 2 * Math.PI * nearby_Hz / sampleRate_Hz; // radians per sample
    double omega = start;
    SineModel model = SineModel.three(x, omega);
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double step = SineModel.four(x, omega, model.p()).p()[3];
      omega += step;
      if (!(Math.abs(omega - start) * x.length < 2 * Math.PI) || !(omega > 0)) {
        return Optional.empty();
      }
      model = SineModel.three(x, omega);
      if (Math.abs(step) < 1e-14 * omega) {
        break;
      }
    }
    return Optional.of(result(x, sampleRate_Hz, omega, model, false));
  }

  private static void require(double[] x, int parameters, double frequency_Hz) {
    if (x.length <= parameters || !(frequency_Hz > 0)) {
      throw new IllegalArgumentException(
          "a sine fit needs more than "
              + parameters
              + " samples and a frequency above 0: "
              + x.length
              + " samples, "
              + frequency_Hz
              + " Hz");
    }
  }

  private static SineFit result(
      double[] x, double rate, double omega, SineModel model, boolean fixed) {
    double[] p = model.p();
    double squares = model.squaresOfResiduals(x);
    double variance = squares / (x.length - (fixed ? 3 : 4));
    RealMatrix inverse = (fixed ? model : SineModel.four(x, omega, p)).inverse();
    double amplitude = Math.hypot(p[0], p[1]);
    double[] toAmplitude = new double[inverse.getRowDimension()];
    toAmplitude[0] = amplitude == 0 ? 1 : p[0] / amplitude;
    toAmplitude[1] = amplitude == 0 ? 0 : p[1] / amplitude;
    double ofAmplitude =
        new ArrayRealVector(inverse.operate(toAmplitude))
            .dotProduct(new ArrayRealVector(toAmplitude));
    double ofOmega = fixed ? 0 : inverse.getEntry(3, 3);
    // The model's time begins in the middle of the record: turn it back to the first sample.
    double turn = omega * model.centre();
    return new SineFit(
        omega * rate / (2 * Math.PI),
        p[0] * Math.cos(turn) - p[1] * Math.sin(turn),
        p[0] * Math.sin(turn) + p[1] * Math.cos(turn),
        p[2],
        Math.sqrt(squares / x.length),
        x.length,
        Math.sqrt(ofOmega * variance) * rate / (2 * Math.PI),
        Math.sqrt(ofAmplitude * variance));
  }

  /** What the sine leaves of the record that it was fitted to. */
  public double[] leaves(double[] x, double sampleRate_Hz) {
    Turning turning = new Turning(2 * Math.PI * frequency_Hz / sampleRate_Hz, 0);
    double[] left = new double[x.length];
    for (int i = 0; i < left.length; i++) {
      turning.to(i);
      left[i] = x[i] - a * turning.cos() - b * turning.sin() - offset;
    }
    return left;
  }

  /** Peak value of the sine. */
  public double amplitude() {
    return Math.hypot(a, b);
  }

  /** θ of amplitude·cos(ωt + θ), −π to π. */
  public double phase_rad() {
    return Math.atan2(-b, a);
  }

  /** Signal to noise and distortion, dB: rms of the sine over {@link #rmsError}. */
  public double sinad_dB() {
    return 20 * Math.log10(amplitude() / Math.sqrt(2) / rmsError);
  }

  /** Effective number of bits that the sine was digitised with, as if it filled the range. */
  public double effectiveBits() {
    return (sinad_dB() - 10 * Math.log10(1.5)) / (20 * Math.log10(2));
  }

  /** Effective number of bits of a digitiser with a given range. */
  public double effectiveBits(double fullScaleRange) {
    return Math.log(fullScaleRange / (rmsError * Math.sqrt(12))) / Math.log(2);
  }
}
