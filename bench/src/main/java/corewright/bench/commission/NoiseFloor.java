package corewright.bench.commission;

import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.Figures;
import java.util.Optional;

/**
 * The noise of a channel with everything off, against what the bench's file states. What is more
 * than stated is not explained, so it may be anything: hum, a loose lead, a drift. It counts whole,
 * as an uncertainty of the zero (JCGM 100, F.2.4.5); far more of it says that the bench is not the
 * one that was described.
 *
 * @param rms standard deviation of one sample, in the channel's unit
 * @param u its standard uncertainty
 */
public record NoiseFloor(String channel, String unit, double rms, double u) {
  /** Common practice, no source: three times the noise of yesterday is another bench. */
  private static final double FAR = 3;

  /** That of a stretch in which everything was off. */
  public static NoiseFloor of(String channel, Spread rest) {
    return new NoiseFloor(channel, rest.unit(), rest.sd(), rest.uSd());
  }

  /** What the channel is known to, its unexplained noise included. */
  public ChannelCalibration in(ChannelCalibration known) {
    return known
        .noise()
        .filter(stated -> rms - 2 * u > stated)
        .map(
            stated ->
                new ChannelCalibration(
                    known.channel(),
                    known.gain_rel(),
                    Math.hypot(known.offset(), Math.sqrt(rms * rms - stated * stated)),
                    known.calibration(),
                    known.noise()))
        .orElse(known);
  }

  /** Why nothing may be run with it; empty where it is not far from what is stated. */
  public Optional<String> against(ChannelCalibration known) {
    return known
        .noise()
        .filter(stated -> rms - 2 * u > FAR * stated)
        .map(
            stated ->
                "Channel "
                    + channel
                    + " hums "
                    + words()
                    + " rms with everything off, where "
                    + Figures.number(1000 * stated, 2)
                    + " m"
                    + unit
                    + " is stated.");
  }

  /** In thousandths of the unit, k = 2. */
  public String words() {
    return Figures.number(1000 * rms, 2) + " ± " + Figures.number(2000 * u, 2) + " m" + unit;
  }
}
