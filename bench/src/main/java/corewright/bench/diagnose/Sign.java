package corewright.bench.diagnose;

/** What one trait of a run looks like. Every trait has a sign that healthy units show. */
enum Sign {
  REST_NORMAL(Trait.REST, true),
  REST_LOW(Trait.REST, false),
  REST_HIGH(Trait.REST, false),
  /** The input less a diode comes through. */
  REST_THROUGH(Trait.REST, false),
  REST_ABSENT(Trait.REST, false),

  AFTER_SAME(Trait.AFTER, true),
  AFTER_LOWER(Trait.AFTER, false),

  SAG_NONE(Trait.SAG, true),
  /** Only with the input lowered. */
  SAG_LOW_LINE(Trait.SAG, false),
  /** At full load. */
  SAG_LATE(Trait.SAG, false),
  /** At three quarters of it or less. */
  SAG_EARLY(Trait.SAG, false),

  LINE_KEPT(Trait.LINE, true),
  /** Also without load: it is the input itself that is not enough. */
  LINE_LOST_AT_REST(Trait.LINE, false),
  /** Only under load. */
  LINE_LOST_LOADED(Trait.LINE, false),

  SHAPE_SMOOTH(Trait.SHAPE, true),
  /** Sudden steps about a level that is otherwise right. */
  SHAPE_JUMPS(Trait.SHAPE, false),
  /** Moves more than a steady slide, and does not come back. */
  SHAPE_SLIDES(Trait.SHAPE, false),
  /** Swings about its level, above it as much as below. */
  SHAPE_SWINGS(Trait.SHAPE, false),
  /** Collapses and comes back, again and again. */
  SHAPE_CYCLES(Trait.SHAPE, false),

  FREQUENCY_AS_BUILT(Trait.FREQUENCY, true),
  FREQUENCY_HALF(Trait.FREQUENCY, false),
  FREQUENCY_OTHER(Trait.FREQUENCY, false),

  SUBHARMONIC_LITTLE(Trait.SUBHARMONIC, true),
  /** Alternate periods differ. */
  SUBHARMONIC_MUCH(Trait.SUBHARMONIC, false),

  RIPPLE_NORMAL(Trait.RIPPLE, true),
  RIPPLE_RAISED(Trait.RIPPLE, false),
  RIPPLE_HIGH(Trait.RIPPLE, false),

  STEP_FROM_REST_NORMAL(Trait.STEP_FROM_REST, true),
  STEP_FROM_REST_DEEP(Trait.STEP_FROM_REST, false),

  STEP_UNDER_LOAD_NORMAL(Trait.STEP_UNDER_LOAD, true),
  STEP_UNDER_LOAD_DEEP(Trait.STEP_UNDER_LOAD, false),

  RINGING_LITTLE(Trait.RINGING, true),
  RINGING_MUCH(Trait.RINGING, false),

  IDLE_NORMAL(Trait.IDLE, true),
  IDLE_RAISED(Trait.IDLE, false),
  IDLE_HIGH(Trait.IDLE, false),

  LOSS_NORMAL(Trait.LOSS, true),
  LOSS_RAISED(Trait.LOSS, false),
  LOSS_HIGH(Trait.LOSS, false),

  DRIFT_LEVEL(Trait.DRIFT, true),
  DRIFT_FALLING(Trait.DRIFT, false),

  POWER_UP_PASSED(Trait.POWER_UP, true),
  POWER_UP_REFUSED(Trait.POWER_UP, false),

  DEAD_INPUT_HIGH(Trait.DEAD_INPUT, true),
  /** Less than its family ever shows. */
  DEAD_INPUT_SHORT(Trait.DEAD_INPUT, false),

  DEAD_OUTPUT_HIGH(Trait.DEAD_OUTPUT, true),
  /** Something draws across it, but less than the rated load. */
  DEAD_OUTPUT_LEAKS(Trait.DEAD_OUTPUT, false),
  /** It would draw more than the rated load. */
  DEAD_OUTPUT_SHORT(Trait.DEAD_OUTPUT, false),

  /** The input comes up. */
  BEHIND_LIMIT_UP(Trait.BEHIND_LIMIT, true),
  /** The input is held down, and the output above it: the converter works, and takes it all. */
  BEHIND_LIMIT_BOOSTS(Trait.BEHIND_LIMIT, false),
  /** The input is held down, and comes through to the output. */
  BEHIND_LIMIT_THROUGH(Trait.BEHIND_LIMIT, false),
  /** No output, and the input stands no higher than a diode and what is in its way. */
  BEHIND_LIMIT_OUTPUT_DOWN(Trait.BEHIND_LIMIT, false),
  /** Not even a diode's drop stands at the input. */
  BEHIND_LIMIT_INPUT_DOWN(Trait.BEHIND_LIMIT, false);

  private final Trait trait;
  private final boolean healthy;

  Sign(Trait trait, boolean healthy) {
    this.trait = trait;
    this.healthy = healthy;
  }

  Trait trait() {
    return trait;
  }

  boolean healthy() {
    return healthy;
  }
}
