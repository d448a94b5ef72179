package corewright.measures.hold;

import corewright.measures.Waveform;

/**
 * How often the load leaves the level of a hold and comes back: pulses, or a contact that opens.
 * Counted sample by sample; a single wild sample is none.
 */
final class Excursions {
  private static final int FEWEST_SAMPLES = 2;

  /** Of a single sample's noise. */
  private static final double NOISE_MARGIN = 8;

  private final Waveform output;
  private final Waveform load;
  private final LoadBlocks blocks;

  Excursions(Waveform output, Waveform load, LoadBlocks blocks) {
    this.output = output;
    this.load = load;
    this.blocks = blocks;
  }

  /**
   * @param start sample from which the edge before is over: its end is no excursion
   * @param end sample at which the load leaves the level for the next: an edge is no excursion
   */
  int count(Plateau plateau, int start, int end) {
    double far =
        Math.max(blocks.threshold_A(), NOISE_MARGIN * blocks.noise_A() * Math.sqrt(blocks.size()));
    int count = 0;
    int away = 0;
    for (int i = start; i < end; i++) {
      if (output.at(i) < blocks.drawing_V()) {
        away = 0; // the load could not draw
        continue;
      }
      double off = Math.abs(load.at(i) - plateau.level_A());
      if (off > far || (away > 0 && off > far / 2)) {
        away++;
      } else {
        count += away >= FEWEST_SAMPLES ? 1 : 0;
        away = 0;
      }
    }
    return count;
  }
}
