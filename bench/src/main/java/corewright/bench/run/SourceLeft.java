package corewright.bench.run;

import corewright.bench.port.Source;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.Optional;

/** Whether a source that was switched off is off. It may say so and not be. */
final class SourceLeft {
  /** What a discharged output capacitor or a meter's zero may still show. */
  private static final double REST_V = 1.0;

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
