package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps every part of a capture: what sealing and recovering need. Not thread-safe. */
final class WholeCapture implements CaptureParts {
  private Optional<CaptureHeader> header = Optional.empty();
  private final List<Segment> segments = new ArrayList<>();
  private Optional<SegmentBuilder> running = Optional.empty();
  private Optional<RunEnd> end = Optional.empty();

  @Override
  public void header(CaptureHeader read) {
    header = Optional.of(read);
  }

  @Override
  public void segment(String id, String kind, double rate_Hz) {
    close();
    int channels = header.map(h -> h.channels().size()).orElse(0);
    running = Optional.of(new SegmentBuilder(id, kind, rate_Hz, channels));
  }

  @Override
  public void samples(long first, short[][] codes) {
    running
        .orElseThrow(() -> new IllegalArgumentException("a frame belongs to no segment"))
        .add(first, codes);
  }

  @Override
  public void gaps(List<Capture.Gap> gaps) {
    running.orElseThrow().add(gaps);
  }

  @Override
  public void end(RunEnd ended) {
    end = Optional.of(ended);
  }

  private void close() {
    running.filter(s -> !s.isEmpty()).ifPresent(s -> segments.add(s.build()));
    running = Optional.empty();
  }

  /**
   * All that came.
   *
   * @throws IllegalArgumentException if no header came
   */
  StoredCapture stored() {
    close();
    CaptureHeader read =
        header.orElseThrow(() -> new IllegalArgumentException("it breaks off in its header"));
    return new StoredCapture(read, segments, end);
  }
}
