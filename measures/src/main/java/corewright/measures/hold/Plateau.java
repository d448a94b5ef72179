package corewright.measures.hold;

/**
 * A stretch of usable blocks on one level of the load current.
 *
 * @param from first block that is settled on the level
 * @param to after the last block before the current leaves it
 * @param level_A mean current at the end of it
 * @param output_V mean output at the end of it
 * @param pulses how often the current left the level and came back to it
 */
record Plateau(int from, int to, double level_A, double output_V, int pulses) {

  /** This one continued by the next, which is on the same level. */
  Plateau joined(Plateau next, int pulsesBetween) {
    return new Plateau(
        from, next.to, next.level_A, next.output_V, pulses + pulsesBetween + next.pulses);
  }
}
