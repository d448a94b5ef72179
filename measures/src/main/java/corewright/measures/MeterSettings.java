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
 * @param band_V half-width of a recovery band of the reader's own, V; empty: none
 * @param switching_Hz the converter's declared switching frequency; empty: not known
 * @param bandwidth_Hz bandwidth that ripple is to be stated in besides the whole; empty: none
 * @param discharge_ohm what the output is discharged through while nothing feeds it, Ω: bleeder and
 *     discharge resistor in parallel; empty: not known
 * @param doubts type B uncertainties by channel name ({@code output}, {@code load}, feed names);
 *     empty for an uncalibrated file
 */
public record MeterSettings(
    Optional<Double> settle_s,
    Optional<Double> guard_s,
    Optional<Double> nominal_V,
    Map<String, ChannelDoubt> doubts,
    Optional<Double> band_V,
    Optional<Double> switching_Hz,
    Optional<Double> bandwidth_Hz,
    Optional<Double> discharge_ohm) {

  public MeterSettings {
    doubts = Map.copyOf(doubts);
  }

  /** Windows, nominal output and doubts alone; the rest not known. */
  public MeterSettings(
      Optional<Double> settle_s,
      Optional<Double> guard_s,
      Optional<Double> nominal_V,
      Map<String, ChannelDoubt> doubts) {
    this(
        settle_s,
        guard_s,
        nominal_V,
        doubts,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  public static MeterSettings defaults() {
    return new MeterSettings(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
  }

  /** These with a recovery band of the reader's own, V. */
  public MeterSettings withBand(Optional<Double> own_V) {
    return new MeterSettings(
        settle_s, guard_s, nominal_V, doubts, own_V, switching_Hz, bandwidth_Hz, discharge_ohm);
  }

  /** These with what is known of the converter and the fixture. */
  public MeterSettings withCircuit(Optional<Double> converter_Hz, Optional<Double> bleed_ohm) {
    return new MeterSettings(
        settle_s, guard_s, nominal_V, doubts, band_V, converter_Hz, bandwidth_Hz, bleed_ohm);
  }

  /** These with a bandwidth that ripple is stated in as well, Hz. */
  public MeterSettings withBandwidth(Optional<Double> stated_Hz) {
    return new MeterSettings(
        settle_s, guard_s, nominal_V, doubts, band_V, switching_Hz, stated_Hz, discharge_ohm);
  }
}
