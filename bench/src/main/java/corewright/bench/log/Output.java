package corewright.bench.log;

import corewright.measures.Measurement;
import java.util.Optional;

/**
 * What the output did in one crank.
 *
 * @param name of its column
 * @param rest before the crank
 * @param first sample of the crank
 * @param last sample of the judged window
 * @param middle of the judged window
 * @param lowestQuarter median of the lowest quarter of the samples, of at least two
 * @param drift in the judged window
 * @param scatter from sample to sample, V
 * @param change last three samples against the first three; of fewer, last against first
 * @param recovered within one second after the crank
 * @param samples that differ from a value merely held
 * @param longestSilence_s without a sample in the judged window, s
 * @param conclusion for this channel alone
 */
public record Output(
    String name,
    Optional<Measurement> rest,
    Optional<Measurement> first,
    Optional<Measurement> last,
    Optional<Measurement> middle,
    Optional<Measurement> lowestQuarter,
    Optional<Measurement> drift,
    Optional<Measurement> scatter,
    Optional<Measurement> change,
    Optional<Measurement> recovered,
    int samples,
    double longestSilence_s,
    Conclusion conclusion) {}
