package corewright.bench.run;

import corewright.profiles.Profile;

/**
 * How a profile's samples are cut into frames.
 *
 * @param rate_Hz samples a second and channel
 * @param samples in a frame, of each channel
 */
public record Framing(int rate_Hz, int samples) {
  /** Short enough that a limit which allows 10 ms is seen in time, long enough to be cheap. */
  private static final double FRAME_S = 0.005;

  /** Payload of a DATA frame before its samples, and the longest payload; see WIRE.md. */
  private static final int HEAD_BYTES = 16;

  private static final int MOST_BYTES = 32_768;

  /** Header, checks and head of a DATA frame. */
  private static final int AROUND_BYTES = 10 + 4 + HEAD_BYTES;

  /** The framing of a profile on a board with so many channels. */
  public static Framing of(Profile profile, int channels) {
    int rate_Hz = (int) Math.round(profile.sampleRate_Hz());
    int most = (MOST_BYTES - HEAD_BYTES) / (2 * Math.max(channels, 1));
    int samples = (int) Math.round(rate_Hz * FRAME_S);
    return new Framing(rate_Hz, Math.max(1, Math.min(samples, most)));
  }

  /** For the way out, when nothing is left to be measured but a slow fall. */
  static Framing slow() {
    return new Framing(1000, 20);
  }

  /** What the digitizer's line must carry, bytes a second. */
  public double bytesPerSecond(int channels) {
    double frames = (double) rate_Hz / samples;
    return frames * (AROUND_BYTES + 2.0 * channels * samples);
  }

  double frame_s() {
    return (double) samples / rate_Hz;
  }
}
