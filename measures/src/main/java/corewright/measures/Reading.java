package corewright.measures;

import java.util.List;
import java.util.Optional;

/** What one quantity came to in one hold: a value with its uncertainty, or why there is none. */
public sealed interface Reading {

  /**
   * A number.
   *
   * @param value with its uncertainty and unit
   * @param flags what a reader must know before using the value, each a sentence; often empty
   */
  record Measured(Measurement value, List<String> flags) implements Reading {
    public Measured {
      flags = List.copyOf(flags);
    }
  }

  /**
   * No number.
   *
   * @param reason one sentence: why there is none
   */
  record NotMeasured(String reason) implements Reading {}

  static Reading of(double value, double u, Unit unit) {
    return new Measured(new Measurement(value, u, unit), List.of());
  }

  static Reading none(String reason) {
    return new NotMeasured(reason);
  }

  default Optional<Measurement> measurement() {
    return this instanceof Measured m ? Optional.of(m.value()) : Optional.empty();
  }
}
