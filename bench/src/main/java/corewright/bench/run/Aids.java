package corewright.bench.run;

import corewright.bench.port.Meter;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** The instruments that a bench may have beside the digitizer, for the length of one run. */
final class Aids implements AutoCloseable {
  private static final String NO_METER = "the bench has no meter.";

  private final Optional<CaseWatch> caseWatch;
  private final Optional<Aside> meterAside;
  private final Optional<BeforePower> beforePower;
  private final Optional<Agreement> agreement;
  private final Witness witness;
  private final Decay decay;
  private final Map<Quantity, Reading> firstPower = new EnumMap<>(Quantity.class);
  private double holdsFrom_s = Double.NaN;
  private Optional<Reading> caseRise = Optional.empty();

  /**
   * @param warmth told of every temperature of the case
   */
  Aids(RunPlan plan, BenchInstruments bench, Consumer<Measurement> warmth) {
    caseWatch =
        bench
            .thermometer()
            .map(t -> new CaseWatch(t, plan.family().abort().case_C(), bench, warmth));
    meterAside = bench.meter().map(m -> new Aside("meter", bench));
    String feed = plan.profile().feeds().get(0).name();
    Optional<Meter> meter = bench.meter();
    beforePower = meterAside.map(a -> new BeforePower(meter.orElseThrow(), a));
    witness = new Witness(meter, meterAside);
    decay = new Decay(plan.family(), plan.bench().fixture().discharge_ohm());
    agreement = meterAside.map(a -> new Agreement(meter.orElseThrow(), a, plan.bench(), feed));
  }

  /** What is looked at with every frame. */
  List<Trip> trips() {
    return caseWatch.<List<Trip>>map(List::of).orElse(List.of());
  }

  Optional<BeforePower> beforePower() {
    return beforePower;
  }

  Optional<Agreement> agreement() {
    return agreement;
  }

  Witness witness() {
    return witness;
  }

  /** Follows the fall of the output; of a charge that was there before the run, too. */
  Decay decay() {
    return decay;
  }

  /** How the terminals stand behind the first power's current limit; the last word counts. */
  void firstPower(Map<Quantity, Reading> standing) {
    firstPower.putAll(standing);
  }

  /** By how much the case warmed between two moments, K; empty where nobody knows. */
  Optional<Double> warmed(double from_s, double to_s) {
    List<Beside.Timed> inside =
        caseWatch.map(CaseWatch::readings).orElse(List.of()).stream()
            .filter(c -> c.at_s() >= from_s && c.at_s() <= to_s)
            .toList();
    return inside.size() < 2
        ? Optional.empty()
        : Optional.of(
            inside.get(inside.size() - 1).reading().value() - inside.get(0).reading().value());
  }

  /** The case was watched under load between these moments: its rise is a reading of the run. */
  void warming(double from_s, double to_s) {
    double u_K =
        caseWatch.map(CaseWatch::readings).orElse(List.of()).stream()
            .mapToDouble(c -> c.reading().u())
            .max()
            .orElse(0);
    caseRise =
        Optional.of(
            warmed(from_s, to_s)
                .map(k -> Reading.of(k, Math.sqrt(2) * u_K, Unit.KELVIN))
                .orElse(Reading.none("the bench has no thermometer on the case.")));
  }

  /** A hold begins; the capture's time begins with the first. */
  void holdBegins(double at_s) {
    if (Double.isNaN(holdsFrom_s)) {
      holdsFrom_s = at_s;
    }
  }

  Beside readings() {
    return new Beside(
        caseWatch.map(CaseWatch::readings).orElse(List.of()),
        caseWatch.isPresent()
            ? "the run ended before the thermometer was asked."
            : "the bench has no thermometer.",
        holdsFrom_s,
        ofRun(),
        agreement.map(Agreement::notes).orElse(List.of()));
  }

  private Map<Quantity, Reading> ofRun() {
    Map<Quantity, Reading> all = new EnumMap<>(Quantity.class);
    beforePower.ifPresentOrElse(
        b -> all.putAll(b.readings()),
        () -> {
          all.put(Quantity.DEAD_INPUT, Reading.none(NO_METER));
          all.put(Quantity.DEAD_OUTPUT, Reading.none(NO_METER));
        });
    all.putAll(firstPower);
    caseRise.ifPresent(rise -> all.put(Quantity.CASE_RISE, rise));
    all.put(Quantity.CAPACITANCE_FROM_DECAY, decay.capacitance());
    return all;
  }

  @Override
  public void close() {
    caseWatch.ifPresent(CaseWatch::close);
    meterAside.ifPresent(Aside::close);
  }
}
