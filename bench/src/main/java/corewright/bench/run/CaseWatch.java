package corewright.bench.run;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Thermometer;
import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The case is too hot, or the thermometer says nothing any more. Where a bench has one, a run that
 * cannot see the temperature is no longer watched.
 */
final class CaseWatch implements Trip, AutoCloseable {
  /** Samples between two questions, s: a case needs seconds to warm by a kelvin. */
  private static final double EVERY_S = 0.2;

  private final Thermometer thermometer;
  private final double most_C;
  private final Consumer<Measurement> warmth;
  private final Aside aside;
  private final List<Beside.Timed> readings = new ArrayList<>();
  private Optional<Aside.Question<Measurement>> asked = Optional.empty();
  private double asked_s;
  private double due_s;

  CaseWatch(
      Thermometer thermometer,
      double most_C,
      BenchInstruments bench,
      Consumer<Measurement> warmth) {
    this.warmth = warmth;
    this.thermometer = thermometer;
    this.most_C = most_C;
    this.aside = new Aside("thermometer", bench);
  }

  @Override
  public Optional<Seen> look(FrameView view) {
    double now_s = view.at_s(view.samples());
    if (asked.isEmpty() && now_s >= due_s) {
      asked = Optional.of(aside.ask(thermometer::temperature));
      asked_s = now_s;
      due_s = now_s + EVERY_S;
    }
    try {
      return asked.flatMap(question -> heard(question, now_s - asked_s));
    } catch (InstrumentFault silent) {
      return Trip.fault(
          silent.instrument() + ": " + silent.doing() + ": " + silent.found() + ".",
          silent.remedy());
    }
  }

  private Optional<Seen> heard(Aside.Question<Measurement> question, double waited_s) {
    Optional<Measurement> answer = question.answer();
    if (answer.isEmpty()) {
      return question.isOverdue(waited_s)
          ? Trip.fault(
              "The thermometer has said nothing for "
                  + Figures.number(Aside.SILENCE.toMillis() / 1000.0, 0)
                  + " s.",
              "Check its cable and that it is on; without it nobody sees a case that is too hot.")
          : Optional.empty();
    }
    asked = Optional.empty();
    Measurement now = answer.get();
    warmth.accept(now);
    readings.add(new Beside.Timed(asked_s, now));
    return now.value() > most_C
        ? Optional.of(
            new Seen(
                RunEnd.Trip.CASE_TOO_HOT,
                0,
                () ->
                    "The case was at "
                        + Figures.withU(now)
                        + "; more than "
                        + Figures.number(most_C, 0)
                        + " °C ends the run.",
                "Let it cool, and find what warms it before it is powered again."))
        : Optional.empty();
  }

  List<Beside.Timed> readings() {
    return List.copyOf(readings);
  }

  @Override
  public void close() {
    aside.close();
  }
}
