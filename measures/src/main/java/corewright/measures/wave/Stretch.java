package corewright.measures.wave;

import corewright.measures.Waveform;

/** Checks on the half-open ranges that every kernel takes. */
final class Stretch {
  private Stretch() {}

  /**
   * @throws IllegalArgumentException unless {@code [from, to)} lies inside the waveform and has at
   *     least {@code least} samples
   */
  static void require(Waveform wave, int from, int to, int least) {
    if (from < 0 || to > wave.size() || to - from < least) {
      throw new IllegalArgumentException(
          "samples ["
              + from
              + ", "
              + to
              + ") are asked for, at least "
              + least
              + " of "
              + wave.size());
    }
  }
}
