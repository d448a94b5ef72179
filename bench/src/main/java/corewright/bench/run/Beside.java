package corewright.bench.run;

import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What instruments beside the digitizer read in a run.
 *
 * @param cases temperatures of the case, in the order in which they were read
 * @param caseNote why there are none, where there are none
 * @param holdsFrom_s when the first hold began, s of samples: where the capture's time begins
 * @param readings of the run as a whole
 * @param notes what a reader must know, each a sentence
 */
public record Beside(
    List<Timed> cases,
    String caseNote,
    double holdsFrom_s,
    Map<Quantity, Reading> readings,
    List<String> notes) {

  /**
   * One reading.
   *
   * @param at_s s of samples since the run began
   */
  public record Timed(double at_s, Measurement reading) {}

  public Beside {
    cases = List.copyOf(cases);
    readings = Map.copyOf(readings);
    notes = List.copyOf(notes);
  }

  /** These with more readings of the run, and what was left open. */
  Beside and(Map<Quantity, Reading> more, List<String> open) {
    Map<Quantity, Reading> all = new EnumMap<>(Quantity.class);
    all.putAll(readings);
    all.putAll(more);
    List<String> said = new ArrayList<>(notes);
    said.addAll(open);
    return new Beside(cases, caseNote, holdsFrom_s, all, said);
  }

  /** What was measured from the capture, with these readings beside it. */
  public MeasuredRun with(MeasuredRun measured) {
    Map<Quantity, Reading> all = new EnumMap<>(Quantity.class);
    all.putAll(measured.readings());
    all.putAll(readings);
    List<String> said = new ArrayList<>(measured.notes());
    said.addAll(notes);
    said.add(caseSentence());
    return new MeasuredRun(
        measured.sampleRate_Hz(),
        measured.samples(),
        measured.uBasis(),
        measured.holds().stream().map(this::with).toList(),
        all,
        said);
  }

  private MeasuredHold with(MeasuredHold hold) {
    List<Measurement> inside =
        cases.stream()
            .filter(c -> c.at_s() - holdsFrom_s >= hold.start_s())
            .filter(c -> c.at_s() - holdsFrom_s < hold.end_s())
            .map(Timed::reading)
            .toList();
    Map<Quantity, Reading> all = new EnumMap<>(Quantity.class);
    all.putAll(hold.readings());
    if (inside.isEmpty()) {
      Reading none =
          Reading.none(cases.isEmpty() ? caseNote : "no reading of the thermometer fell into it.");
      all.put(Quantity.CASE_START, none);
      all.put(Quantity.CASE_END, none);
      all.put(Quantity.CASE_HIGHEST, none);
    } else {
      all.put(Quantity.CASE_START, of(inside.get(0)));
      all.put(Quantity.CASE_END, of(inside.get(inside.size() - 1)));
      all.put(Quantity.CASE_HIGHEST, of(hottest(inside)));
    }
    return new MeasuredHold(
        hold.index(),
        hold.start_s(),
        hold.end_s(),
        hold.windowStart_s(),
        hold.windowEnd_s(),
        all,
        hold.feeds(),
        hold.recoveryState());
  }

  private String caseSentence() {
    if (cases.isEmpty()) {
      return "The temperature of the case was not measured: " + caseNote;
    }
    List<Measurement> all = cases.stream().map(Timed::reading).toList();
    return "The case was at "
        + Figures.withU(all.get(0))
        + " when the run began, at most at "
        + Figures.withU(hottest(all))
        + ", and at "
        + Figures.withU(all.get(all.size() - 1))
        + " when it ended.";
  }

  private static Measurement hottest(List<Measurement> all) {
    return all.stream().max(Comparator.comparingDouble(Measurement::value)).orElseThrow();
  }

  private static Reading of(Measurement measured) {
    return new Reading.Measured(measured, List.of());
  }
}
