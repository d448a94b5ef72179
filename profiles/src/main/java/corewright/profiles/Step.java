package corewright.profiles;

import corewright.measures.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
 * @param detail what only some kinds take
 */
public record Step(
    String id,
    Kind kind,
    String title,
    double input_V,
    double inputLimit_A,
    double load_A,
    double hold_s,
    boolean judged,
    Detail detail) {

  /** A step of a kind that takes no detail. */
  public Step(
      String id,
      Kind kind,
      String title,
      double input_V,
      double inputLimit_A,
      double load_A,
      double hold_s,
      boolean judged) {
    this(id, kind, title, input_V, inputLimit_A, load_A, hold_s, judged, Detail.NONE);
  }

  /**
   * What only some kinds take; see {@link StepKeys}.
   *
   * @param sampleRate_Hz samples a second and channel while it runs; empty: the profile's
   * @param to_V where a ramp of the input turns round, V
   * @param ramp_VperS how fast it goes, V/s
   * @param levels levels of the input, in order
   * @param repeats how often the levels are gone through
   * @param quantity what a person reads, where the bench cannot
   * @param needed without it the run is not complete
   */
  public record Detail(
      Optional<Double> sampleRate_Hz,
      double to_V,
      double ramp_VperS,
      List<Level> levels,
      int repeats,
      Optional<Quantity> quantity,
      boolean needed) {
    /** A step that the bench does. */
    public Detail(
        Optional<Double> sampleRate_Hz,
        double to_V,
        double ramp_VperS,
        List<Level> levels,
        int repeats) {
      this(sampleRate_Hz, to_V, ramp_VperS, levels, repeats, Optional.empty(), true);
    }

    public static final Detail NONE = new Detail(Optional.empty(), 0, 0, List.of(), 1);

    public Detail {
      levels = List.copyOf(levels);
    }
  }

  /**
   * One level of the input.
   *
   * @param judged read from it; false for the way to the next
   */
  public record Level(double input_V, double hold_s, boolean judged) {}

  /** The highest input that it asks for, V. */
  public double highest_V() {
    return detail.levels().stream().mapToDouble(Level::input_V).reduce(input_V, Math::max);
  }

  /** What the engine does with a step. */
  public enum Kind {
    /** Nothing on: the residual voltage must be under the family's safe level and not rise. */
    DEAD_CHECK,
    /** The source ramps 0 to {@code input_V} at low current, load off; a short stops here. */
    FIRST_POWER,
    /** Load and line are held constant. */
    HOLD,
    /** Output run down, then the source switched on at once: rise, overshoot, inrush. */
    START,
    /** Enabled, settled, no load: what the unit itself draws. */
    QUIESCENT,
    /** The input through several levels at a constant load. */
    LINES,
    /** The input down until the converter lets go and up until it works again, no load. */
    LOCK_OUT,
    /** The highest input, for a while. */
    HIGH_LINE,
    /** The levels of a cranking, at one load, several times. */
    CRANK,
    /** A load until the case no longer warms. */
    THERMAL,
    /** The input taken away without load: how long the output holds up. */
    DECAY,
    /** Nothing: a person reads it elsewhere, or it stands as not measured. */
    BY_HAND,
    /** Source off, discharge on, until the family's safe level is proved. */
    DISCHARGE;

    /** Readings of the run that are taken in a step of this kind alone. */
    public Set<Quantity> yields() {
      return StepKeys.of(this).yields();
    }
  }
}
