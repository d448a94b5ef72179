package corewright.station.work;

import corewright.bench.record.Finding;
import corewright.bench.record.RunRecord;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What was read of a run as a whole and no limit asks for: told, and judges nobody. Of a step that
 * was not done nothing is told; that stands in the run's notes.
 */
public final class Told {
  /** Where none is an answer: the unit held all the way, or latched off. */
  private static final Set<Quantity> NONE_IS_AN_ANSWER =
      Set.of(Quantity.HOLDS_TO, Quantity.SURVIVAL_BACK);

  private Told() {}

  /**
   * A line each, in the order of the quantities.
   *
   * @param figure how a measurement is written
   */
  public static List<String> of(RunRecord run, Function<Measurement, String> figure) {
    return of(
        run.measured().map(MeasuredRun::readings).orElse(Map.of()),
        run.judgement().findings().stream().map(Finding::quantity).collect(Collectors.toSet()),
        figure);
  }

  static List<String> of(
      Map<Quantity, Reading> read, Set<Quantity> judged, Function<Measurement, String> figure) {
    List<String> lines = new ArrayList<>();
    for (Quantity quantity : Quantity.values()) {
      Reading reading = read.get(quantity);
      if (judged.contains(quantity)) {
        continue;
      }
      if (reading instanceof Reading.Measured measured) {
        String flags = String.join(" ", measured.flags());
        lines.add(
            quantity.title()
                + ": "
                + figure.apply(measured.value())
                + (flags.isEmpty() ? "." : " (" + flags.replaceFirst("\\.$", "") + ")."));
      } else if (reading instanceof Reading.NotMeasured none
          && NONE_IS_AN_ANSWER.contains(quantity)) {
        lines.add(quantity.title() + ": none, as " + none.reason().replaceFirst("\\.$", "") + ".");
      }
    }
    return lines;
  }
}
