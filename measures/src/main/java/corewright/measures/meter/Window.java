package corewright.measures.meter;

import corewright.measures.Capture;
import corewright.measures.hold.Hold;
import corewright.measures.wave.Samples;
import java.util.Optional;

/**
 * The judged part of a hold, and the whole of it, as samples.
 *
 * @param from first sample of the window {@code [start + settle, end − guard)}
 * @param to after its last sample
 * @param holdFrom first sample of the hold
 * @param holdTo after its last sample
 * @param guardTo after the last sample before the guard, for the recovery
 * @param missing where samples are missing
 * @param unread why the window cannot be read; empty where it can
 */
record Window(
    Hold hold,
    double from_s,
    double to_s,
    int from,
    int to,
    int holdFrom,
    int holdTo,
    int guardTo,
    Missing missing,
    Optional<String> unread) {

  /** Where in a hold samples are missing. */
  enum Missing {
    NONE,
    OUTSIDE_THE_WINDOW,
    INSIDE_THE_WINDOW
  }

  private static final int FEWEST = 3;

  static Window of(Hold hold, double settle_s, double guard_s, Capture capture) {
    double rate = capture.sampleRate_Hz();
    double from_s = hold.start_s() + settle_s;
    double to_s = hold.end_s() - guard_s;
    int holdFrom = Math.min(capture.size() - 1, Samples.at(hold.start_s(), rate));
    int holdTo = Math.max(holdFrom + 1, Math.min(capture.size(), Samples.at(hold.end_s(), rate)));
    int guardTo = Math.max(holdFrom, Math.min(holdTo, Samples.at(to_s, rate)));
    int from = Math.min(guardTo, Samples.at(from_s, rate));
    return new Window(
        hold,
        from_s,
        Math.max(from_s, to_s),
        from,
        guardTo,
        holdFrom,
        holdTo,
        guardTo,
        missing(capture, holdFrom, holdTo, from, guardTo),
        unread(from, guardTo, capture));
  }

  private static Missing missing(Capture capture, int holdFrom, int holdTo, int from, int to) {
    if (capture.gaps().stream().anyMatch(gap -> gap.touches(from, to))) {
      return Missing.INSIDE_THE_WINDOW;
    }
    return capture.gaps().stream().anyMatch(gap -> gap.touches(holdFrom, holdTo))
        ? Missing.OUTSIDE_THE_WINDOW
        : Missing.NONE;
  }

  private static Optional<String> unread(int from, int to, Capture capture) {
    if (to - from < FEWEST) {
      return Optional.of(
          "the hold leaves "
              + Math.max(0, to - from)
              + " samples between settling and guard, and "
              + FEWEST
              + " are needed");
    }
    return capture.gaps().stream().anyMatch(gap -> gap.touches(from, to))
        ? Optional.of("samples are missing inside the window")
        : Optional.empty();
  }

  /** Whether samples are missing anywhere in the hold. */
  boolean gapped() {
    return missing != Missing.NONE;
  }

  int count() {
    return to - from;
  }
}
