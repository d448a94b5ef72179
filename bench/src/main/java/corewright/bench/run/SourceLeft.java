package corewright.bench.run;

import corewright.bench.port.Source;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.Optional;

/** Whether a source that was switched off is off. It may say so and not be. */
final class SourceLeft {
  /** A unit's input capacitor may keep part of what it was given; a source that is on keeps all. */
  private static final double SHARE = 0.9;

  private SourceLeft() {}

  /**
   * A sentence if it is still on.
   *
   * @param most_V the most that it was set to
   */
  static Optional<String> on(Source source, double most_V) {
    Optional<Boolean> says = source.isOn();
    if (says.isPresent() && !says.get()) {
      return Optional.empty();
    }
    Measurement voltage = source.voltage();
    boolean gives = says.isPresent() || voltage.value() > SHARE * most_V;
    return gives && most_V > 0
        ? Optional.of(
            "The source is still on after it was switched off, at "
                + Figures.withU(voltage)
                + ": pull its plug.")
        : Optional.empty();
  }
}
