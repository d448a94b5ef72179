package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.function.IntToDoubleFunction;

/**
 * Scatter of a series about its expectation, and how many independent values it is worth.
 *
 * <p>The series is averaged in blocks (at most {@value #MOST_BLOCKS}, so that long ones cost no
 * more than reading them), and the variance of the mean is the blocks' variance times 1 + 2Σρ, with
 * the autocorrelation ρ summed over lags in pairs for as long as a pair is positive beyond its own
 * noise (Geyer's initial positive sequence). Strong ripple is no noise: where the spectrum near
 * zero says that the mean is known far better, it is believed ({@link NearZero}). Ripple that folds
 * onto the mean itself, at a multiple of the sample rate, no method can tell from the mean.
 *
 * @param sd standard deviation
 * @param count samples
 * @param effectiveCount independent samples that would have the same scatter of the mean; at most
 *     the number of samples, unless most of the scatter is periodic
 * @see "JCGM 100:2008, 4.2.7 correlated observations; Geyer, Practical Markov chain Monte Carlo,
 *     Statistical Science 7 (1992) 473, section 3.3"
 */
public record CorrelatedScatter(double sd, int count, double effectiveCount) {
  private static final int MOST_BLOCKS = 1024;
  private static final int FEW_BLOCKS = 64;
  private static final int FEWEST_BLOCKS = 8;

  /** Noise alone makes the two estimates this different once in some thousand stretches. */
  private static final double CLEARLY = 2.5;

  /** Scatter of samples {@code [from, to)} about a straight line; at least two. */
  public static CorrelatedScatter of(Waveform wave, int from, int to, LinearTrend trend) {
    Stretch.require(wave, from, to, 2);
    return of(i -> wave.at(from + i) - trend.at(from + i), to - from, 2);
  }

  /**
   * Scatter of the squares of the same residuals about their mean: what the uncertainty of an rms
   * comes from. Squares forget sooner than the values themselves. Harmonics of ripple above half
   * the sample rate fold onto others, and their products onto the mean square: see {@link
   * Interleaved}.
   */
  public static CorrelatedScatter ofSquares(
      Waveform wave, int from, int to, LinearTrend trend, double meanSquare) {
    Stretch.require(wave, from, to, 2);
    return ofSquares(i -> wave.at(from + i) - trend.at(from + i), to - from, meanSquare);
  }

  /** The same of any series of mean zero. */
  public static CorrelatedScatter ofSquares(
      IntToDoubleFunction series, int count, double meanSquare) {
    return of(
        i -> {
          double residual = series.applyAsDouble(i);
          return residual * residual - meanSquare;
        },
        count,
        1,
        true);
  }

  /**
   * Scatter of any series of mean zero.
   *
   * @param count its length, at least one
   * @param fitted how many parameters were fitted to make its mean zero
   */
  public static CorrelatedScatter of(IntToDoubleFunction series, int count, int fitted) {
    return of(series, count, fitted, false);
  }

  /**
   * @param folds whether products of lines may have folded onto the mean
   */
  private static CorrelatedScatter of(
      IntToDoubleFunction series, int count, int fitted, boolean folds) {
    double squares = 0;
    for (int i = 0; i < count; i++) {
      double value = series.applyAsDouble(i);
      squares += value * value;
    }
    double sd = Math.sqrt(squares / Math.max(1, count - fitted));
    if (sd == 0 || count < FEWEST_BLOCKS) {
      return new CorrelatedScatter(sd, count, count);
    }
    double varianceOfMean = Math.max(varianceOfMean(series, count), sd * sd / count);
    double quiet = NearZero.of(series, count).varianceOfMean();
    if (quiet * CLEARLY < varianceOfMean) {
      double folded = folds ? Interleaved.of(series, count).varianceOfMean() : 0;
      varianceOfMean = Math.min(varianceOfMean, Math.max(quiet, folded));
    }
    double effective = varianceOfMean > 0 ? sd * sd / varianceOfMean : count;
    return new CorrelatedScatter(sd, count, Math.max(1, effective));
  }

  private static double varianceOfMean(IntToDoubleFunction series, int count) {
    BlockMeans fine = BlockMeans.of(series, count, MOST_BLOCKS);
    // Where the correlation turns negative there is something periodic in it, which hides what the
    // noise does at low frequencies; long blocks average it away.
    return fine.isPeriodic()
        ? BlockMeans.of(series, count, FEW_BLOCKS).varianceOfMean()
        : fine.varianceOfMean();
  }

  /** Standard uncertainty of the mean. */
  public double ofMean() {
    return sd / Math.sqrt(effectiveCount);
  }
}
