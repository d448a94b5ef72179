package corewright.bench.run;

import corewright.measures.Figures;
import corewright.profiles.Discharge;
import java.util.Optional;

/**
 * Proof that a unit holds no charge: with the resistor on, the output falls under the family's safe
 * level in time; with it off, it stays there and does not rise, so no second capacitor was hidden
 * behind the first.
 *
 * @see "common practice, no source: accept below 5 V and not rising by more than 0.5 V in 10 s"
 */
final class DischargeProof {
  private static final double RISE_V = 0.5;

  private final Sampler sampler;
  private final BenchInstruments bench;
  private final Discharge discharge;
  private final Optional<Decay> decay;

  DischargeProof(Sampler sampler, BenchInstruments bench, Discharge discharge) {
    this(sampler, bench, discharge, Optional.empty());
  }

  /**
   * @param decay follows the fall
   */
  DischargeProof(
      Sampler sampler, BenchInstruments bench, Discharge discharge, Optional<Decay> decay) {
    this.sampler = sampler;
    this.bench = bench;
    this.discharge = discharge;
    this.decay = decay;
  }

  /** Watches the fall with the resistor connected; a sentence if it was not seen. */
  Optional<String> falls() {
    decay.ifPresent(Decay::begin);
    FrameView view = sampler.next();
    double deadline_s = view.at_s(0) + discharge.within_s();
    while (highest_V(view) >= discharge.safe_V()) {
      FrameView falling = view;
      decay.ifPresent(d -> d.add(falling));
      if (view.at_s(0) >= deadline_s) {
        return Optional.of(
            "The output still holds "
                + volts(highest_V(view))
                + " after "
                + Figures.number(discharge.within_s(), 1)
                + " s on the discharge resistor; under "
                + volts(discharge.safe_V())
                + " counts as discharged.");
      }
      view = sampler.next();
    }
    return Optional.empty();
  }

  /** Watches it stay down with the resistor lifted; a sentence if it did not. Connects it again. */
  Optional<String> stays(double watch_s) {
    bench.discharge().discharge(false);
    FrameView view = sampler.next();
    double before_V = highest_V(view);
    double until_s = view.at_s(0) + watch_s;
    Optional<String> rises = Optional.empty();
    while (rises.isEmpty() && view.at_s(0) < until_s) {
      view = sampler.next();
      double now_V = highest_V(view);
      if (now_V >= discharge.safe_V() || now_V > before_V + RISE_V) {
        rises =
            Optional.of(
                "With the discharge resistor lifted the output rose from "
                    + volts(before_V)
                    + " to "
                    + volts(now_V)
                    + ": charge is left inside.");
      }
    }
    bench.discharge().discharge(true);
    return rises;
  }

  /** Highest magnitude in the frame, so that noise can only delay the proof. */
  private static double highest_V(FrameView view) {
    int output = view.channel("output");
    double highest = 0;
    for (int i = 0; i < view.samples(); i++) {
      highest = Math.max(highest, Math.abs(view.value(output, i)));
    }
    return highest;
  }

  private static String volts(double v) {
    return Double.isInfinite(v) ? "more than can be measured" : Figures.number(v, 2) + " V";
  }
}
