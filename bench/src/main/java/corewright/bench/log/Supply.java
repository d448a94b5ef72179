package corewright.bench.log;

import corewright.bench.record.Qualifier;
import corewright.measures.Measurement;
import java.util.Optional;

/**
 * What one supply did in one crank.
 *
 * @param name of its column
 * @param nearness to the module's terminals: 3 at them, 0 far
 * @param rest before the crank; empty where nothing was logged
 * @param lowest of all samples of the crank, inrush included
 * @param middle of the judged window
 * @param minimum that is no accident, in the judged window: it qualifies the crank
 * @param samples in the judged window
 * @param longestSilence_s without a sample in the judged window, s
 * @param good_V at or above: valid, V
 * @param tolerated_V at or above, below good: tolerated; below: void, V
 * @param qualifier empty where nothing is known: no samples, or a channel that does not move
 * @param flat whether all of many samples of the crank say the same, inrush included
 * @param remark what a reader must know; often empty
 */
public record Supply(
    String name,
    int nearness,
    Optional<Measurement> rest,
    Optional<Measurement> lowest,
    Optional<Measurement> middle,
    Optional<Measurement> minimum,
    int samples,
    double longestSilence_s,
    double good_V,
    double tolerated_V,
    Optional<Qualifier> qualifier,
    boolean flat,
    String remark) {}
