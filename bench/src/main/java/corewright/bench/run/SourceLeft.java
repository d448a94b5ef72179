package corewright.bench.run;

import corewright.bench.port.Source;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.Optional;

/** Whether a source that was switched off is off. It may say so and not be. */
final class SourceLeft {
  /**
   * What the unit's own input capacitor may still hold at the sense leads, which end at the unit. A
   * source that stayed on gives what a profile asks for, and no profile asks for so little.
   */
  private static final double REST_V = 5.0;

  private SourceLeft() {}

  /** A sentence if it still gives voltage. */
  static Optional<String> on(Source source) {
    Measurement voltage = source.voltage();
    return voltage.value() - voltage.expanded(2) <= REST_V
        ? Optional.empty()
        : Optional.of(
            "The source still gives "
                + Figures.withU(voltage)
                + " after it was switched off: pull its plug.");
  }
}
