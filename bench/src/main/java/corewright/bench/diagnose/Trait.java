package corewright.bench.diagnose;

/** What of a run is looked at. Each is read by itself, and may be missing. */
enum Trait {
  /** Output without load. */
  REST,
  /** Output without load after the load, against before. */
  AFTER,
  /** From which load on the output is not held. */
  SAG,
  /** What a lowered input does. */
  LINE,
  /** What the output looks like within a hold. */
  SHAPE,
  /** Converter frequency. */
  FREQUENCY,
  /** Ripple at half the converter's frequency. */
  SUBHARMONIC,
  /** Ripple against what the family's own capacitor would make of the current. */
  RIPPLE,
  /** Fall after the first load step, V/A. */
  STEP_FROM_REST,
  /** Fall after the deepest other load step, V/A. */
  STEP_UNDER_LOAD,
  /** What follows the first fall: healthy units swing over by a small part of it. */
  RINGING,
  /** Power taken without load, W. */
  IDLE,
  /** Part lost of each further watt that goes in, %. */
  LOSS,
  /** Slope within a steady hold. */
  DRIFT,
  /** Whether it can be powered at all. */
  POWER_UP,
  /** Resistance of the input before power. */
  DEAD_INPUT,
  /** Resistance of the output before power. */
  DEAD_OUTPUT,
  /** Where the terminals stand behind the first power's current limit. */
  BEHIND_LIMIT
}
