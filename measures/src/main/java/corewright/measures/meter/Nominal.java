package corewright.measures.meter;

import java.util.Optional;

/**
 * The nominal output that the recovery band is a part of.
 *
 * @param flag what to know about it; empty where it was given
 */
record Nominal(double value_V, Optional<String> flag) {

  static Nominal of(Optional<Double> given_V, double reference_V) {
    return given_V
        .map(value -> new Nominal(value, Optional.empty()))
        .orElseGet(
            () ->
                new Nominal(
                    Math.abs(reference_V),
                    Optional.of(
                        "the nominal output is not known: the band is 1 % of the hold that droop"
                            + " refers to")));
  }
}
