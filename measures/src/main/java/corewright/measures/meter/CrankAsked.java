package corewright.measures.meter;

import java.util.List;
import java.util.Optional;

/**
 * What load and source were told to do by themselves while an engine was cranked.
 *
 * @param events of the load; empty: it was steady
 * @param swings of the source, one for each judged level of a repeat; empty where it stood still
 */
public record CrankAsked(Optional<PulsesAsked> events, List<Optional<Swing>> swings) {
  /** A steady load and a flat plateau. */
  public static final CrankAsked STEADY = new CrankAsked(Optional.empty(), List.of());

  public CrankAsked {
    swings = List.copyOf(swings);
  }

  /**
   * @param swing_Vpp from the lowest to the highest
   * @param rate_Hz how often it goes up and down in a second
   */
  public record Swing(double swing_Vpp, double rate_Hz) {}

  /** Of a capture, where those of the judged levels of all repeats follow on one another. */
  Optional<Swing> swing(int capture) {
    return swings.isEmpty() ? Optional.empty() : swings.get(capture % swings.size());
  }
}
