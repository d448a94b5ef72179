package corewright.bench.run;

import corewright.bench.port.Meter;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The instruments that a bench may have beside the digitizer, for the length of one run. */
final class Aids implements AutoCloseable {
  private final Optional<CaseWatch> caseWatch;
  private final Optional<Aside> meterAside;
  private final Optional<BeforePower> beforePower;
  private final Optional<Agreement> agreement;
  private double holdsFrom_s = Double.NaN;

  Aids(RunPlan plan, BenchInstruments bench) {
    caseWatch =
        bench
            .thermometer()
            .map(t -> new CaseWatch(t, plan.family().abort().case_C(), bench.digitizer()));
    meterAside = bench.meter().map(m -> new Aside("meter", bench.digitizer()));
    String feed = plan.profile().feeds().get(0).name();
    Optional<Meter> meter = bench.meter();
    beforePower = meterAside.map(a -> new BeforePower(meter.orElseThrow(), a));
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
        beforePower.map(BeforePower::readings).orElse(Map.of()),
        agreement.map(Agreement::notes).orElse(List.of()));
  }

  @Override
  public void close() {
    caseWatch.ifPresent(CaseWatch::close);
    meterAside.ifPresent(Aside::close);
  }
}
