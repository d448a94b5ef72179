package corewright.measures;

import java.util.Map;
import java.util.Optional;

/**
 * How a capture is to be read.
 *
 * @param settle_s not judged after each load edge; empty: 0.5 s or a fifth of the shortest hold,
 *     whichever is less
 * @param guard_s not judged before the next edge; empty: 20 ms or a hundredth of the shortest hold,
 *     whichever is less
 * @param nominal_V nominal output, what recovery's ±1 % refers to; empty: not known
 * @param doubts type B uncertainties by channel name ({@code output}, {@code load}, feed names);
 *     empty for an uncalibrated file
 */
public record MeterSettings(
    Optional<Double> settle_s,
    Optional<Double> guard_s,
    Optional<Double> nominal_V,
    Map<String, ChannelDoubt> doubts) {

  public MeterSettings {
    doubts = Map.copyOf(doubts);
  }

  public static MeterSettings defaults() {
    return new MeterSettings(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
  }
}
