package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A capture read back from disk.
 *
 * @param end how the run ended; empty if the file breaks off before
 */
public record StoredCapture(CaptureHeader header, List<Segment> segments, Optional<RunEnd> end) {

  public StoredCapture {
    segments = List.copyOf(segments);
  }

  /** Some segments, each as a capture of its own, in order. */
  public List<Capture> each(Predicate<Segment> wanted) {
    return segments.stream()
        .filter(wanted)
        .flatMap(s -> JoinedSegments.of(header, List.of(s)).stream())
        .toList();
  }

  /** What was sampled while the profile's holds ran; empty if it never came to one. */
  public Optional<Capture> holds() {
    return JoinedSegments.of(
        header, segments.stream().filter(s -> s.kind().equals("HOLD")).toList());
  }
}
