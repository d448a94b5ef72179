package corewright.measures.wave;

/** From time to sample index. */
public final class Samples {
  private Samples() {}

  /**
   * First sample at or after an instant. An instant within a millionth of a sample after a sample
   * is that sample: 0.0179 s at 1 MS/s is sample 17,900 whatever the last bit of the product says.
   */
  public static int at(double time_s, double sampleRate_Hz) {
    return (int) Math.ceil(time_s * sampleRate_Hz - 0.05);
  }
}
