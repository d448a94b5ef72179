package corewright.station.web.live;

import corewright.measures.Measurement;
import java.util.Optional;

/**
 * What the last frame showed, all of one moment: the engine's thread puts a new one in the place of
 * the old, and nobody waits for anybody.
 *
 * @param atNanos when it came, on the host's clock
 * @param at_s time within the run, s
 * @param total_s how long the profile usually takes, s
 * @param output_V highest magnitude of the output within the frame
 * @param input_V highest of the input within the frame
 * @param chainWhole whether the board finds the interlock chain whole
 * @param mean of the output in the judged window so far; empty where there is none
 * @param lowest_V lowest 1 ms median of the input within this hold; empty where there is none
 */
record Seen(
    long atNanos,
    double at_s,
    double total_s,
    double output_V,
    double input_V,
    boolean chainWhole,
    Optional<Measurement> mean,
    Optional<Measurement> lowest_V) {}
