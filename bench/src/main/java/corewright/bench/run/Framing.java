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
    return of((int) Math.round(profile.sampleRate_Hz()), channels);
  }

  /** Frames of 5 ms, or as long as one can be. */
  public static Framing of(int rate_Hz, int channels) {
    int samples = (int) Math.round(rate_Hz * FRAME_S);
    return new Framing(rate_Hz, Math.max(1, Math.min(samples, most(channels))));
  }

  /**
   * The highest rate that a line of so many bytes a second carries; 0 if it carries none. Frames
   * hold whole samples, so each count of samples is asked for the rates that are cut so.
   */
  public static int highestRate_Hz(double bytesPerSecond, int channels) {
    int most = most(channels);
    for (int samples = most; samples > 0; samples--) {
      double fits = Math.floor(bytesPerSecond / (AROUND_BYTES / (double) samples + 2.0 * channels));
      double from = samples == 1 ? 1 : Math.ceil((samples - 0.5) / FRAME_S);
      double below = samples == most ? Integer.MAX_VALUE : Math.ceil((samples + 0.5) / FRAME_S);
      int rate_Hz = (int) Math.min(fits, below - 1);
      if (rate_Hz >= from) {
        return rate_Hz;
      }
    }
    return 0;
  }

  private static int most(int channels) {
    return (MOST_BYTES - HEAD_BYTES) / (2 * Math.max(channels, 1));
  }

  /** For the way out, when nothing is left to be measured but a slow fall. */
  static Framing slow(int most_Hz) {
    int rate_Hz = Math.min(1000, most_Hz);
    return new Framing(rate_Hz, Math.max(1, rate_Hz / 50));
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
