package corewright.bench.judge;

import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A unit that is known to be good, on this bench now, against its own record from when the bench
 * was known to be good: where it differs, the bench does. Pure.
 *
 * @see "common practice, no source: mean within 0.3 %, dip within 10 %, ripple within 15 %"
 */
public final class ReferenceCheck {
  private static final double LEVEL = 0.003;
  private static final double DIP = 0.1;
  private static final double RIPPLE = 0.15;
  private static final double CURRENT = 0.02;

  /** Below this part of the set-point a fall or a ripple is not worth a word. */
  private static final double SMALL = 0.0008;

  private ReferenceCheck() {}

  /**
   * What differs, each a sentence; empty if the bench is as it was.
   *
   * @param record the reference unit in this profile on the proved bench
   * @param now the same unit and profile on the bench in question
   */
  public static List<String> doubts(MeasuredRun record, MeasuredRun now, Family family) {
    if (record.holds().size() != now.holds().size()) {
      return List.of("The reference unit does not run through the profile on this bench.");
    }
    List<String> doubts = new ArrayList<>();
    double small_V = SMALL * family.output_V();
    for (int i = 0; i < record.holds().size(); i++) {
      MeasuredHold was = record.holds().get(i);
      MeasuredHold is = now.holds().get(i);
      differs(Quantity.OUTPUT, was, is, LEVEL, 0).ifPresent(doubts::add);
      differs(Quantity.UNDERSHOOT, was, is, DIP, small_V).ifPresent(doubts::add);
      differs(Quantity.RIPPLE_PEAK_TO_PEAK, was, is, RIPPLE, small_V).ifPresent(doubts::add);
      differs(Quantity.INPUT_CURRENT, was, is, CURRENT, 0.05).ifPresent(doubts::add);
    }
    return List.copyOf(doubts);
  }

  private static Optional<String> differs(
      Quantity quantity, MeasuredHold was, MeasuredHold is, double part, double small) {
    Optional<Measurement> before = was.value(quantity);
    Optional<Measurement> after = is.value(quantity);
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    double most =
        part * Math.abs(before.get().value()) + small + 2 * before.get().u() + 2 * after.get().u();
    return Math.abs(after.get().value() - before.get().value()) <= most
        ? Optional.empty()
        : Optional.of(
            quantity.title()
                + " of the reference unit is "
                + Figures.withU(after.get())
                + Sentences.atLoad(is)
                + ", on the proved bench it was "
                + Figures.withU(before.get())
                + ": the bench is in doubt.");
  }
}
