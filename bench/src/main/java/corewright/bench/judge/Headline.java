package corewright.bench.judge;

import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A reading by which a bench is followed from shift to shift.
 *
 * @param id stable, as {@code full:output}
 * @param title what a chart calls it
 */
public record Headline(String id, String title, Measurement reading) {
  private static final List<Quantity> AT_FULL_LOAD =
      List.of(
          Quantity.OUTPUT,
          Quantity.RIPPLE_PEAK_TO_PEAK,
          Quantity.UNDERSHOOT,
          Quantity.INPUT_CURRENT,
          Quantity.DIP,
          Quantity.ESR);
  private static final List<Quantity> OF_THE_RUN = List.of(Quantity.OUTPUT_RESISTANCE);

  /** Those of a run, always in the same order; what was not measured is not among them. */
  public static List<Headline> of(MeasuredRun run) {
    Comparator<MeasuredHold> byLoad =
        Comparator.comparing(h -> h.value(Quantity.LOAD).map(Measurement::value).orElse(0.0));
    List<Headline> found = new ArrayList<>();
    run.holds().stream()
        .min(byLoad)
        .flatMap(h -> h.value(Quantity.OUTPUT).map(m -> at("rest", Quantity.OUTPUT, h, m)))
        .ifPresent(found::add);
    Optional<MeasuredHold> full = run.holds().stream().max(byLoad);
    for (Quantity quantity : AT_FULL_LOAD) {
      full.flatMap(h -> h.value(quantity).map(m -> at("full", quantity, h, m)))
          .ifPresent(found::add);
    }
    for (Quantity quantity : OF_THE_RUN) {
      run.reading(quantity)
          .measurement()
          .map(m -> new Headline("run:" + quantity.id(), quantity.title(), m))
          .ifPresent(found::add);
    }
    return List.copyOf(found);
  }

  private static Headline at(String where, Quantity quantity, MeasuredHold hold, Measurement m) {
    return new Headline(where + ":" + quantity.id(), quantity.title() + Sentences.atLoad(hold), m);
  }
}
