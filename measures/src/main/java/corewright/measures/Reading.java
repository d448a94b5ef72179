package corewright.measures;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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

  /** The same, with more of what a reader must know; where there is no number, the same. */
  default Reading flagged(List<String> more) {
    return more.isEmpty() || !(this instanceof Measured m)
        ? this
        : new Measured(m.value(), Stream.concat(m.flags().stream(), more.stream()).toList());
  }

  default Optional<Measurement> measurement() {
    return this instanceof Measured m ? Optional.of(m.value()) : Optional.empty();
  }
}
