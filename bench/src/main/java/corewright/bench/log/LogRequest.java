package corewright.bench.log;

import corewright.bench.log.table.Choices;
import java.util.List;
import java.util.Optional;

/**
 * How a log shall be read.
 *
 * @param family the unit's, if it is known
 * @param families all that it could be, for telling it by the output's rest
 * @param choices what a person said instead of letting it be guessed
 * @param window what a person gave as the judged window; the cranks are found by themselves if
 *     empty
 */
public record LogRequest(
    Optional<LogFamily> family,
    List<LogFamily> families,
    Choices choices,
    Optional<Window> window) {
  public LogRequest {
    families = List.copyOf(families);
  }

  double[] nominals_V() {
    return family
        .map(f -> new double[] {f.output_V()})
        .orElseGet(() -> families.stream().mapToDouble(LogFamily::output_V).toArray());
  }
}
