package corewright.bench.run;

import corewright.bench.record.RunEnd;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;

/** A channel that stays beyond a level for longer than allowed. */
final class Beyond implements Trip {
  private final RunEnd.Trip trip;
  private final String channel;
  private final DoublePredicate beyond;
  private final double allowed_s;
  private final Predicate<FrameView> counts;
  private final Words words;
  private long running;
  private int rate_Hz;

  /** Makes the sentence from the value that tripped. */
  interface Words {
    String saw(double value, FrameView view);
  }

  /**
   * @param beyond true from some value on, to one side: where neither the least nor the greatest
   *     value of a frame is beyond, nothing between them is
   * @param allowed_s how long it may be beyond, s; 0: not a single sample
   * @param counts frames that are looked at; any other ends the counting
   */
  Beyond(
      RunEnd.Trip trip,
      String channel,
      DoublePredicate beyond,
      double allowed_s,
      Predicate<FrameView> counts,
      Words words) {
    this.trip = trip;
    this.channel = channel;
    this.beyond = beyond;
    this.allowed_s = allowed_s;
    this.counts = counts;
    this.words = words;
  }

  @Override
  public Optional<Seen> look(FrameView view) {
    int c = view.channel(channel);
    if (c < 0 || !counts.test(view)) {
      running = 0;
      return Optional.empty();
    }
    if (view.rate_Hz() != rate_Hz) { // what was counted at another rate counts for its time
      running = rate_Hz == 0 ? 0 : Math.round((double) running * view.rate_Hz() / rate_Hz);
      rate_Hz = view.rate_Hz();
    }
    if (running > 0) {
      running += Math.max(0, view.frame().first() - view.previousEnd()); // what was not seen
    }
    if (isWithin(view.extremes(c))) {
      running = 0;
      return Optional.empty();
    }
    for (int i = 0; i < view.samples(); i++) {
      double value = view.value(c, i);
      running = beyond.test(value) ? running + 1 : 0;
      if (running > allowed_s * view.rate_Hz()) {
        return Optional.of(
            new Seen(
                trip,
                i,
                () -> words.saw(value, view),
                "Find the cause before the unit is powered again."));
      }
    }
    return Optional.empty();
  }

  /** What nearly every frame is: then its samples need not be looked at one by one. */
  private boolean isWithin(Optional<FrameView.Extremes> extremes) {
    return extremes.isPresent()
        && !beyond.test(extremes.get().oneEnd())
        && !beyond.test(extremes.get().otherEnd());
  }
}
