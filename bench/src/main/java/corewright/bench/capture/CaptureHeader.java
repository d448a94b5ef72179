package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a capture says about itself. Holds nothing that differs between two runs of the same seed.
 *
 * @param rate_Hz samples a second and channel while the profile runs
 * @param channels in the order of the samples
 * @param feeds names of the channels that are supply feeds, in the profile's order
 * @param notes what else a finder should know, as {@code profile} and {@code unit}
 */
public record CaptureHeader(
    double rate_Hz, List<Channel> channels, List<String> feeds, SortedMap<String, String> notes) {

  public CaptureHeader {
    channels = List.copyOf(channels);
    feeds = List.copyOf(feeds);
    notes = new TreeMap<>(notes);
  }
}
