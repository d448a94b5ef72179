package corewright.profiles;

/**
 * Levels at which a run is cut off at once. Output under its limit with a valid input is a FAIL.
 *
 * @param outputOver_V any sample above trips
 * @param outputUnder_V output below this for {@code underHold_s} while loaded trips
 * @param inputOver_A supply current above this for {@code inputOver_s} trips
 * @param case_C case temperature above this trips, where it is measured
 */
public record AbortLimits(
    double outputOver_V,
    double outputUnder_V,
    double underHold_s,
    double inputOver_A,
    double inputOver_s,
    double case_C) {}
