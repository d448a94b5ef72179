package corewright.reports.chart;

import corewright.profiles.InputZones;
import corewright.profiles.Limit;
import java.util.List;
import java.util.Optional;

/**
 * Everything that the picture of a run shows, ready to be drawn.
 *
 * @param time_s the time axis
 * @param others other runs of the same unit on the same axis, for comparison: the first dashed, the
 *     second dotted
 * @param nominal_V stays in view, whatever the output did
 * @param judged every window in which something was judged
 * @param headline the window that the one sentence speaks of
 * @param lowPoint where the input fell below what the test needs
 * @param silent nothing is said about the unit: the windows are veiled
 * @param emulated the curves are no unit's
 */
record Scene(
    Span time_s,
    Trace output,
    List<Trace> others,
    List<Trace> inputs,
    Optional<Trace> load,
    Optional<InputZones> zones,
    Optional<Double> nominal_V,
    List<Span> judged,
    Optional<Headline> headline,
    Optional<Point> lowPoint,
    boolean silent,
    boolean emulated) {

  Scene {
    others = List.copyOf(others);
    inputs = List.copyOf(inputs);
    judged = List.copyOf(judged);
  }

  /** The same scene with other runs behind it. */
  Scene behind(List<Trace> before) {
    return new Scene(
        time_s, output, before, inputs, load, zones, nominal_V, judged, headline, lowPoint, silent,
        emulated);
  }

  /**
   * What the picture is about.
   *
   * @param window between the jaws
   * @param floors where the limit applies
   * @param limitWords as {@code limit 46.50}
   * @param mean_V what was read in the window; empty where nothing was
   * @param reading the mean with its U, in words
   * @param margin its distance to the limit, in words
   */
  record Headline(
      Span window,
      List<Span> floors,
      Limit.Side side,
      double limit_V,
      String limitWords,
      Optional<Double> mean_V,
      String reading,
      String margin) {

    Headline {
      floors = List.copyOf(floors);
    }
  }

  /** A point of the input lane with its label. */
  record Point(double time_s, double value_V, String words) {}
}
