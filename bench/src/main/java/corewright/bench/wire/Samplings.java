package corewright.bench.wire;

import corewright.bench.port.Digitizer.Channel;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** One sample in words, as {@code input 0.001 V, output 0.000 V}. */
final class Samplings {
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private Samplings() {}

  /** Takes one sample. */
  static String words(Scans scans) {
    short[][] codes = scans.next(PATIENCE).codes();
    List<Channel> channels = scans.channels();
    return IntStream.range(0, codes.length)
        .mapToObj(c -> words(channels.get(c), codes[c][0]))
        .collect(Collectors.joining(", "));
  }

  private static String words(Channel channel, short code) {
    return String.format(
        Locale.ROOT,
        "%s %.3f %s",
        channel.name(),
        code * channel.lsb() + channel.offset(),
        channel.unit());
  }
}
