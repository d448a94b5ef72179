package corewright.bench.log;

/**
 * The limits that a log is held against. They are those of a 48 V output, scaled by the nominal
 * output; starting judgements of the trade, no source.
 *
 * @param low_V lowest quarter below: speaks for a fault
 * @param good_V lowest quarter at or above: may speak for the module
 * @param falling_V_s drift surely below this, with the middle under good: speaks for a fault
 * @param steady_V_s drift surely within plus and minus this: steady
 * @param scatter_V scatter beyond this with a good middle: dips that slow sampling hits at random
 * @param clip_V an output that keeps to a round number above this is cut off there by the tool
 */
record LogRule(
    double low_V,
    double good_V,
    double falling_V_s,
    double steady_V_s,
    double scatter_V,
    double clip_V) {
  /** Fewer distinct samples than this in the window support no fault. */
  static final int FAULT_SAMPLES = 3;

  /** Fewer than this do not speak for the module. */
  static final int GOOD_SAMPLES = 8;

  /** Nor does a shorter stretch, s. */
  static final double GOOD_SPAN_S = 3;

  /** A crank shorter than this is not judged, s. */
  static final double SHORTEST_S = 1;

  /** No starter turns longer, s. */
  static final double LONGEST_S = 60;

  /** The inrush: from the first drop of the supply, not judged, s. */
  static final double INRUSH_S = 0.5;

  /** The release at the end, not judged, s. */
  static final double RELEASE_S = 0.3;

  static LogRule of(LogFamily family) {
    double k = family.output_V() / 48;
    return new LogRule(45.0 * k, 46.5 * k, -0.2 * k, 0.3 * k, 0.3 * k, 1.035 * family.output_V());
  }
}
