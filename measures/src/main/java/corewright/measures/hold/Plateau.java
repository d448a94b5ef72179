package corewright.measures.hold;

/**
 * A stretch of usable blocks on one level of the load current.
 *
 * @param from first block that is settled on the level
 * @param to after the last block before the current leaves it
 * @param level_A mean current at the end of it
 * @param output_V mean output at the end of it
 */
record Plateau(int from, int to, double level_A, double output_V) {

  /** This one continued by a later one on the same level. */
  Plateau joined(Plateau later) {
    return new Plateau(from, later.to, later.level_A, later.output_V);
  }

  int length() {
    return to - from;
  }
}
