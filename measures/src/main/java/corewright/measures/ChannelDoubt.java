package corewright.measures;

/**
 * Type B standard uncertainties of one channel (JCGM 100, 4.3), from the bench description.
 *
 * @param gain_rel of the scale factor, relative; fully correlated between holds of one run
 * @param offset in the channel's unit; fully correlated between holds of one run
 */
public record ChannelDoubt(double gain_rel, double offset) {
  /** Nothing is known about the channel: scatter and resolution only. */
  public static final ChannelDoubt UNKNOWN = new ChannelDoubt(0, 0);
}
