package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Segments of some kinds as one capture to measure, put together while they come. Of the file it
 * keeps on the heap no more than a {@link CodeColumn} does. Not thread-safe.
 */
final class JoinedSegments implements CaptureParts {
  private static final int MOST = Integer.MAX_VALUE / 2;

  private final Predicate<String> kinds;
  private final List<CodeColumn> columns = new ArrayList<>();
  private final List<Capture.Gap> gaps = new ArrayList<>();
  private Optional<CaptureHeader> header = Optional.empty();
  private Optional<RunEnd> end = Optional.empty();
  private Optional<String> kind = Optional.empty();
  private double rate_Hz;
  private double segmentRate_Hz;
  private long first;
  private int size;
  private int segmentAt;

  /**
   * @param kinds of the steps that are wanted
   */
  JoinedSegments(Predicate<String> kinds) {
    this.kinds = kinds;
  }

  /** The same of segments that are there already, whatever their kind. */
  static Optional<Capture> of(CaptureHeader header, List<Segment> segments) {
    JoinedSegments joined = new JoinedSegments(kind -> true);
    joined.header(header);
    for (Segment segment : segments) {
      joined.segment(segment.id(), segment.kind(), segment.rate_Hz());
      joined.samples(segment.first(), segment.codes());
      joined.gaps(segment.gaps());
    }
    return joined.capture();
  }

  @Override
  public void header(CaptureHeader read) {
    header = Optional.of(read);
    read.channels().forEach(channel -> columns.add(new CodeColumn(0)));
  }

  @Override
  public void segment(String id, String newKind, double newRate_Hz) {
    kind = Optional.of(newKind);
    segmentRate_Hz = newRate_Hz;
    segmentAt = -1;
  }

  @Override
  public void samples(long at, short[][] codes) {
    String mine =
        kind.orElseThrow(() -> new IllegalArgumentException("a frame belongs to no segment"));
    if (!kinds.test(mine)) {
      return;
    }
    if (size == 0) {
      first = at;
      rate_Hz = segmentRate_Hz;
    }
    long missing = at - first - size;
    int count = codes.length == 0 ? 0 : codes[0].length;
    if (missing + size + count > MOST) {
      throw new IllegalArgumentException(
          missing + " samples missing before sample " + at + " are more than can be measured");
    }
    if (codes.length != columns.size() || missing < 0) {
      throw new IllegalArgumentException(
          codes.length + " channels from sample " + at + " do not follow on " + (first + size));
    }
    if (missing > 0) {
      gaps.add(new Capture.Gap(size, (int) missing));
    }
    for (int c = 0; c < codes.length; c++) {
      if (missing > 0) {
        columns.get(c).repeat((int) missing);
      }
      columns.get(c).add(codes[c]);
    }
    if (segmentAt < 0) {
      segmentAt = size + (int) missing;
    }
    size += (int) missing + count;
  }

  @Override
  public void gaps(List<Capture.Gap> ofSegment) {
    if (kind.filter(kinds).isPresent()) {
      ofSegment.forEach(g -> gaps.add(new Capture.Gap(segmentAt + g.from(), g.count())));
    }
  }

  @Override
  public void end(RunEnd ended) {
    end = Optional.of(ended);
  }

  Optional<RunEnd> end() {
    return end;
  }

  /**
   * @throws IllegalArgumentException if none came
   */
  CaptureHeader header() {
    return header.orElseThrow(() -> new IllegalArgumentException("it breaks off in its header"));
  }

  /**
   * What came, once; empty if nothing did.
   *
   * @throws IllegalArgumentException if there is no output channel or a feed is not sampled
   */
  Optional<Capture> capture() {
    if (size == 0) {
      return Optional.empty();
    }
    gaps.sort(Comparator.comparingInt(Capture.Gap::from));
    return Optional.of(
        new Capture(
            rate_Hz,
            waveform("output")
                .orElseThrow(() -> new IllegalArgumentException("there is no channel 'output'")),
            waveform("load"),
            header().feeds().stream().map(this::feed).toList(),
            waveform("inputCurrent"),
            gaps));
  }

  private Capture.Feed feed(String name) {
    return new Capture.Feed(
        name,
        waveform(name)
            .orElseThrow(
                () -> new IllegalArgumentException("feed '" + name + "' was not sampled")));
  }

  private Optional<Waveform> waveform(String name) {
    for (int c = 0; c < columns.size(); c++) {
      Channel channel = header().channels().get(c);
      if (channel.name().equals(name)) {
        return Optional.of(
            columns.get(c).waveform(channel.lsb(), channel.offset(), unit(channel.unit())));
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
