package corewright.bench.diagnose;

/**
 * A sign with the reading that shows it.
 *
 * @param sentence the reading in words, a clause
 */
record Seen(Sign sign, String sentence) {}
