package corewright.bench.run;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Meter;
import corewright.bench.port.Meter.Terminals;
import corewright.bench.record.RunEnd;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A short is looked for with a meter, while the unit is without charge and nothing is on. */
final class BeforePower {
  /** The meter's own current charges the unit first, and its reading rises (common practice). */
  private static final double RISES_S = 5;

  /** No junction that is sound drops less, V (common practice, no source). */
  private static final double JUNCTION_V = 0.15;

  private final Meter meter;
  private final Aside aside;
  private final Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);

  BeforePower(Meter meter, Aside aside) {
    this.meter = meter;
    this.aside = aside;
  }

  Map<Quantity, Reading> readings() {
    return Map.copyOf(readings);
  }

  /** Lifts the discharge resistor, looks at both pairs of terminals, and connects it again. */
  void look(StepKind.Station station) {
    RunContext context = station.context();
    context.bench().discharge().discharge(false);
    station.sampler().next();
    station
        .aids()
        .witness()
        .contradicts(station)
        .ifPresent(
            saw -> {
              throw refuse(
                  saw,
                  "Treat the unit as charged: check the digitizer's leads, then discharge it by"
                      + " hand.",
                  station);
            });
    double output_ohm = context.plan().family().dead().output_ohm();
    double input_ohm = context.plan().family().dead().input_ohm();
    resistance(Terminals.OUTPUT, Quantity.DEAD_OUTPUT, output_ohm, station);
    resistance(Terminals.INPUT, Quantity.DEAD_INPUT, input_ohm, station);
    junction(station);
    context.bench().discharge().discharge(true);
  }

  private void resistance(
      Terminals terminals, Quantity quantity, double least_ohm, StepKind.Station station) {
    ask(
        () -> {
          meter.to(terminals);
          return Optional.empty();
        },
        station);
    double until_s = station.sampler().at_s() + RISES_S;
    Optional<Measurement> found = ask(meter::resistance, station);
    while (isLess(found, least_ohm) && station.sampler().at_s() < until_s) {
      station.sampler().next();
      found = ask(meter::resistance, station);
    }
    readings.put(
        quantity,
        found
            .<Reading>map(m -> new Reading.Measured(m, List.of()))
            .orElse(Reading.none("it is more than the meter's range reaches.")));
    if (isLess(found, least_ohm)) {
      requireLifted(station.context());
      throw refuse(
          "Between the "
              + words(terminals)
              + " terminals the meter finds "
              + Figures.withU(found.orElseThrow())
              + "; less than "
              + Figures.number(least_ohm, 0)
              + " Ω is a short.",
          "Do not power it; look for the short at its " + words(terminals) + ".",
          station);
    }
  }

  /** A fixture that heard nothing for too long has connected its resistor: that is no short. */
  private static void requireLifted(RunContext context) {
    if (context.bench().discharge().discharging()) {
      throw new InstrumentFault(
          "switch",
          "looking for shorts",
          "The discharge resistor is connected again, though it was lifted",
          "Close other programs, check the digitizer's cable, and begin again.");
    }
  }

  private void junction(StepKind.Station station) {
    Optional<Measurement> drop = ask(meter::diode, station);
    if (isLess(drop, JUNCTION_V)) {
      throw refuse(
          "Between the input terminals the meter's diode test finds "
              + Figures.withU(drop.orElseThrow())
              + "; no sound junction drops less than "
              + Figures.number(JUNCTION_V, 2)
              + " V.",
          "Do not power it; look for a short at its input.",
          station);
    }
  }

  /** Samples go on while the meter is asked. */
  private Optional<Measurement> ask(
      Supplier<Optional<Measurement>> question, StepKind.Station station) {
    return AsideWait.until(aside.ask(question), station.sampler(), "meter");
  }

  private static boolean isLess(Optional<Measurement> found, double least) {
    return found.filter(m -> m.value() < least).isPresent();
  }

  private static String words(Terminals terminals) {
    return terminals == Terminals.INPUT ? "input" : "output";
  }

  private static EndOfRun refuse(String saw, String remedy, StepKind.Station station) {
    return new EndOfRun(
        new RunEnd(
            RunEnd.Kind.REFUSED_TO_POWER, station.step(), station.sampler().at_s(), saw, remedy));
  }
}
