package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a recorder for slow things cannot resolve: what lies between its samples. A number taken
 * there would be one about the recorder.
 */
final class TooSlow {
  /**
   * A converter answers a step within some milliseconds to some tens of them; with fewer samples
   * none or one falls into it (common practice, no source).
   */
  private static final double LEAST_HZ = 100;

  private static final Set<Quantity> FAST =
      EnumSet.of(
          Quantity.RIPPLE_PEAK_TO_PEAK,
          Quantity.RIPPLE_RMS,
          Quantity.RIPPLE_RMS_DETRENDED,
          Quantity.RIPPLE_FUNDAMENTAL,
          Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE,
          Quantity.UNDERSHOOT,
          Quantity.OVERSHOOT,
          Quantity.RECOVERY,
          Quantity.RECOVERY_QUARTER,
          Quantity.RECOVERY_BAND,
          Quantity.TIME_OF_MINIMUM,
          Quantity.OUTPUT_STEPS,
          Quantity.LARGEST_STEP);

  private TooSlow() {}

  /** Takes away what was read of something that the rate does not resolve. */
  static void strike(double rate_Hz, Readings readings) {
    if (rate_Hz >= LEAST_HZ) {
      return;
    }
    String reason =
        "not measurable at "
            + Figures.plain(rate_Hz)
            + " samples a second: it is over between two of them, and "
            + Math.round(LEAST_HZ)
            + " are needed at least";
    readings.all().replaceAll((q, r) -> FAST.contains(q) ? Reading.none(reason) : r);
  }
}
