package corewright.profiles;

/**
 * One entry of a profile.
 *
 * @param id as {@code full}
 * @param title what a person calls it, as "Steady full load"
 * @param input_V the source is set to this, V; in a profile that drops the supply, the lowest input
 *     that this step asks for: the input qualifier then holds the input against it
 * @param inputLimit_A current limit of the source, A
 * @param load_A constant-current load, A
 * @param hold_s how long, s
 * @param judged readings of this step are held against limits and count for the input qualifier
 */
public record Step(
    String id,
    Kind kind,
    String title,
    double input_V,
    double inputLimit_A,
    double load_A,
    double hold_s,
    boolean judged) {

  /** What the engine does with a step. */
  public enum Kind {
    /** Nothing on: the residual voltage must be under the family's safe level and not rise. */
    DEAD_CHECK,
    /** The source ramps 0 to {@code input_V} at low current, load off; a short stops here. */
    FIRST_POWER,
    /** Load and line are held constant. */
    HOLD,
    /** Source off, discharge on, until the family's safe level is proved. */
    DISCHARGE
  }
}
