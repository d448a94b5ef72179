package corewright.profiles;

import corewright.measures.Quantity;
import java.util.EnumSet;
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
   * @param pulses what the load does on top of {@code load_A}
   * @param rest_s between one repeat and the next, without load, s
   */
  public record Detail(
      Optional<Double> sampleRate_Hz,
      double to_V,
      double ramp_VperS,
      List<Level> levels,
      int repeats,
      Optional<Quantity> quantity,
      boolean needed,
      Optional<Pulses> pulses,
      double rest_s) {
    /** A step that the bench does. */
    public Detail(
        Optional<Double> sampleRate_Hz,
        double to_V,
        double ramp_VperS,
        List<Level> levels,
        int repeats) {
      this(
          sampleRate_Hz,
          to_V,
          ramp_VperS,
          levels,
          repeats,
          Optional.empty(),
          true,
          Optional.empty());
    }

    /** One that does not rest. */
    public Detail(
        Optional<Double> sampleRate_Hz,
        double to_V,
        double ramp_VperS,
        List<Level> levels,
        int repeats,
        Optional<Quantity> quantity,
        boolean needed,
        Optional<Pulses> pulses) {
      this(sampleRate_Hz, to_V, ramp_VperS, levels, repeats, quantity, needed, pulses, 0);
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
   * @param swing what the source does about it
   */
  public record Level(double input_V, double hold_s, boolean judged, Optional<Swing> swing) {
    public Level(double input_V, double hold_s, boolean judged) {
      this(input_V, hold_s, judged, Optional.empty());
    }

    /** The highest that it asks for, V. */
    public double highest_V() {
      return input_V + swing.map(s -> s.swing_Vpp() / 2).orElse(0.0);
    }
  }

  /**
   * A sine on a level of the input, as the strokes of an engine that is cranked make it.
   *
   * @param swing_Vpp from the lowest to the highest
   * @param rate_Hz how often it goes up and down in a second
   */
  public record Swing(double swing_Vpp, double rate_Hz) {}

  /**
   * A load that goes from {@link #load_A} to a higher level and back, again and again.
   *
   * @param high_A in a pulse, A
   * @param width_s of a pulse, s
   * @param rate_Hz pulses a second
   * @param slower what is done before, at lower rates
   */
  public record Pulses(double high_A, double width_s, double rate_Hz, List<Slower> slower) {
    /** At one rate alone. */
    public Pulses(double high_A, double width_s, double rate_Hz) {
      this(high_A, width_s, rate_Hz, List.of());
    }

    public Pulses {
      slower = List.copyOf(slower);
    }

    /** How long the slower rates take together, s. */
    public double slower_s() {
      return slower.stream().mapToDouble(Slower::hold_s).sum();
    }
  }

  /** The same pulses at a lower rate, for so long. */
  public record Slower(SlowPulses at, double rate_Hz, double hold_s) {}

  /** What is read of the run in this step alone. */
  public Set<Quantity> yields() {
    Set<Quantity> yields = EnumSet.noneOf(Quantity.class);
    yields.addAll(kind.yields());
    List<SlowPulses> asked =
        detail.pulses().stream().flatMap(p -> p.slower().stream()).map(Slower::at).toList();
    for (SlowPulses rate : SlowPulses.values()) {
      if (!asked.contains(rate)) {
        yields.removeAll(rate.yields());
      }
    }
    return yields;
  }

  /** The load on the whole, A: what the converter must deliver. */
  public double mean_A() {
    return detail
        .pulses()
        .map(p -> load_A + (p.high_A() - load_A) * p.width_s() * p.rate_Hz())
        .orElse(load_A);
  }

  /** The highest load that it asks for, A. */
  public double highest_A() {
    return detail.pulses().map(Pulses::high_A).orElse(load_A);
  }

  /** What a person may enter for it, where the bench cannot do it. */
  public Optional<Quantity> byHand() {
    return detail.quantity().or(() -> StepKeys.of(kind).byHand());
  }

  /** The highest input that it asks for, V. */
  public double highest_V() {
    return detail.levels().stream().mapToDouble(Level::highest_V).reduce(input_V, Math::max);
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
    /** The input slowly down under load: how far the output holds. */
    FALLING,
    /** The highest input, for a while. */
    HIGH_LINE,
    /** The levels of a cranking, at one load, several times. */
    CRANK,
    /** The input far below what it must work from, and back, without load: told, not judged. */
    SURVIVAL,
    /** A load until the case no longer warms. */
    THERMAL,
    /** The load in pulses: how deep the output dips in each, what its capacitors hold. */
    PULSES,
    /** One load, sampled fast for a moment: the ripple. */
    BURST,
    /** The input taken away without load: how long the output holds up. */
    DECAY,
    /** Nothing: a person reads it elsewhere, or it stands as not measured. */
    BY_HAND,
    /** Source off, discharge on, until the family's safe level is proved. */
    DISCHARGE;

    /** Every reading of the run that a step of this kind can take. */
    public Set<Quantity> yields() {
      return StepKeys.of(this).yields();
    }
  }
}
