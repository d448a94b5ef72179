package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import corewright.measures.Capture;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Segments as one capture to measure. */
final class Waveforms {

  private Waveforms() {}

  /**
   * @throws IllegalArgumentException if there is no output channel or a feed is not sampled
   */
  static Optional<Capture> of(CaptureHeader header, List<Segment> segments) {
    if (segments.isEmpty()) {
      return Optional.empty();
    }
    SegmentBuilder joined =
        new SegmentBuilder("holds", "HOLD", segments.get(0).rate_Hz(), header.channels().size());
    List<Capture.Gap> gaps = new ArrayList<>();
    long first = segments.get(0).first();
    for (Segment segment : segments) {
      joined.add(segment.first(), segment.codes());
      int shift = Math.toIntExact(segment.first() - first);
      segment.gaps().forEach(g -> gaps.add(new Capture.Gap(shift + g.from(), g.count())));
    }
    Segment whole = joined.build();
    gaps.addAll(whole.gaps()); // between segments
    gaps.sort((a, b) -> Integer.compare(a.from(), b.from()));
    return Optional.of(
        new Capture(
            whole.rate_Hz(),
            waveform(header, whole, "output")
                .orElseThrow(() -> new IllegalArgumentException("there is no channel 'output'")),
            waveform(header, whole, "load"),
            header.feeds().stream().map(name -> feed(header, whole, name)).toList(),
            waveform(header, whole, "inputCurrent"),
            gaps));
  }

  private static Capture.Feed feed(CaptureHeader header, Segment whole, String name) {
    return new Capture.Feed(
        name,
        waveform(header, whole, name)
            .orElseThrow(
                () -> new IllegalArgumentException("feed '" + name + "' was not sampled")));
  }

  private static Optional<Waveform> waveform(CaptureHeader header, Segment whole, String name) {
    for (int c = 0; c < header.channels().size(); c++) {
      Channel channel = header.channels().get(c);
      if (channel.name().equals(name)) {
        int[] codes = new int[whole.samples()];
        for (int i = 0; i < codes.length; i++) {
          codes[i] = whole.codes()[c][i];
        }
        return Optional.of(
            Waveform.ofCodes(codes, channel.lsb(), channel.offset(), unit(channel.unit())));
      }
    }
    return Optional.empty();
  }

  private static Unit unit(String symbol) {
    return Stream.of(Unit.values())
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("unit '" + symbol + "' is not known"));
  }
}
