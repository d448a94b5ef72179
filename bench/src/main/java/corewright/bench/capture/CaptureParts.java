package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import java.util.List;

/**
 * Takes a capture in parts while its file is read, so that nobody need have room for all of it. The
 * header comes first; samples and gaps belong to the segment that was named last.
 */
interface CaptureParts {

  void header(CaptureHeader header);

  /** What follows was sampled during one step, as {@link Segment} says. */
  void segment(String id, String kind, double rate_Hz);

  /**
   * Some samples of the segment.
   *
   * @param first index of the first of them; where it does not follow on the one before, samples
   *     are missing
   * @param codes {@code codes[channel][sample]}
   * @throws IllegalArgumentException if they overlap with what came before
   */
  void samples(long first, short[][] codes);

  /** Where samples of the segment just read are missing although codes stand there. */
  void gaps(List<Capture.Gap> gaps);

  void end(RunEnd end);
}
