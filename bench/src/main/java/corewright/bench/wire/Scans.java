package corewright.bench.wire;

import corewright.bench.port.Digitizer.Channel;
import java.time.Duration;
import java.util.List;

/** Where a digitizer that only samples has its samples from. */
interface Scans {

  /**
   * Samples that came together.
   *
   * @param first index of the first since the start
   * @param codes {@code codes[channel][sample]}
   * @param broken how many arrived broken before them
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, to one reader, and never compared
  record Batch(long first, short[][] codes, int broken) {}

  /** The whole identification answer; asked again each time. */
  String identity();

  List<Channel> channels();

  /** Whether nothing is missed while the next batch is not asked for. */
  boolean waits();

  void start(int rate_Hz, int samples);

  /**
   * The next samples, at most as many as were asked for.
   *
   * @throws corewright.bench.port.InstrumentFault if there are none within {@code patience}
   */
  Batch next(Duration patience);

  void stop();

  void off();

  void close();
}
