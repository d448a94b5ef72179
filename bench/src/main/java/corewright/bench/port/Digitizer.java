package corewright.bench.port;

import java.time.Duration;
import java.util.List;

/** What samples the unit. A fixture's board is the {@link Relay} as well. */
public interface Digitizer extends Instrument {

  /** Channels in the order of the samples. */
  List<Channel> channels();

  /** Fastest rate, samples a second and channel. */
  default int most_Hz() {
    return Integer.MAX_VALUE;
  }

  /** What its line must carry at a rate, bytes a second. */
  double bytesPerSecond(int rate_Hz, int samplesPerFrame);

  /** Begins sampling. */
  void start(int rate_Hz, int samplesPerFrame);

  /**
   * The next frame, checked; acknowledges it where the stream is acknowledged.
   *
   * @throws InstrumentFault if none comes within {@code patience}, or the line is lost
   */
  Frame next(Duration patience);

  /**
   * Whether its time stands still while the next frame is not asked for: then nothing is missed by
   * waiting for another instrument.
   */
  boolean waits();

  /** Ends sampling. */
  void stop();

  /**
   * One sampled channel.
   *
   * @param name {@code input}, {@code output}, {@code load}, {@code inputCurrent} or a feed's name
   * @param lsb value of one code, in {@code unit}
   * @param offset value of code 0
   */
  record Channel(String name, String unit, double lsb, double offset) {}

  /** How the fixture stood when a frame was taken; see WIRE.md. */
  record Status(
      boolean interlockWhole,
      boolean relayClosed,
      boolean discharging,
      boolean overRange,
      boolean lostBefore,
      boolean watchdogTripped) {}

  /**
   * Samples of one frame.
   *
   * @param first index of the first sample since the start
   * @param codes {@code codes[channel][sample]}
   * @param brokenBefore frames that arrived broken or repeated since the last good one
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, to one reader, and never compared
  record Frame(long first, Status status, short[][] codes, int brokenBefore) {
    public int samples() {
      return codes.length == 0 ? 0 : codes[0].length;
    }
  }
}
