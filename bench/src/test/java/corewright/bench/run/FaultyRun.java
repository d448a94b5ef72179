package corewright.bench.run;

import corewright.bench.judge.Judge;
import corewright.bench.port.InstrumentFault;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * One run of a profile whose holds last a second, with faults.
 *
 * @param unplugged pulled when the discharge begins
 * @param also a step that is no hold, before the holds; a decay after them
 */
record FaultyRun(
    UnitParameters unit, List<WireFault> faults, Optional<String> unplugged, Optional<Step> also) {
  static final int RATE_HZ = 2000;

  /** Inside the dead check, the first power, at rest and under full load, s of samples. */
  static final List<Double> STEPS_S = List.of(0.5, 1.8, 2.8, 3.3);

  /** Where a step that is no hold begins, and where one after the holds does, s of samples. */
  static final double BEFORE_S = 2.6;

  static final double AFTER_S = 3.6;

  /** End of the last hold, about, s of samples. */
  static final double END_S = 3.7;

  private static final long HUNG_S = 90;

  FaultyRun(UnitParameters unit, List<WireFault> faults, Optional<String> unplugged) {
    this(unit, faults, unplugged, Optional.empty());
  }

  private Profile profile() {
    List<Limit> limits =
        Catalogue.ofHome().profile("sd48-arrival").limits().stream()
            .filter(l -> List.of("output-full", "output-rest").contains(l.id()))
            .toList();
    Optional<Step> last = also.filter(s -> s.kind() == Step.Kind.DECAY);
    List<Step> steps = new ArrayList<>();
    steps.add(Plans.DEAD);
    steps.add(new Step("first", Step.Kind.FIRST_POWER, "First power", 12.5, 0.5, 0, 1.5, false));
    also.filter(s -> last.isEmpty()).ifPresent(steps::add);
    steps.add(Plans.hold("rest", 12.5, 0, 0.4));
    steps.add(Plans.hold("full", 12.5, 2, 0.6));
    last.ifPresent(steps::add);
    steps.add(Plans.AWAY);
    return Plans.profile("sd48", RATE_HZ, steps).withLimits(limits);
  }

  /**
   * What came of it.
   *
   * @param wrong it says PASS or FAIL, and the run without the fault says otherwise
   */
  record Came(
      boolean hung, boolean energised, boolean wrong, Optional<Verdict> verdict, String words) {}

  Came run(Path folder, Optional<Verdict> truth) throws IOException {
    Profile profile = profile();
    Setup setup = Setup.of(unit, 1).with(faults.toArray(WireFault[]::new));
    try (OnPty pty = new OnPty(setup)) {
      AtomicReference<String> ended = new AtomicReference<>("");
      AtomicReference<Optional<Verdict>> verdict = new AtomicReference<>(Optional.empty());
      CountDownLatch done = new CountDownLatch(1);
      Thread station =
          new Thread(
              () -> {
                try (BenchInstruments bench = pty.open()) {
                  RunResult result = pty.run(bench, folder, profile, pulling(pty));
                  verdict.set(verdict(profile, result));
                  ended.set(
                      result.end().kind()
                          + " in '"
                          + result.end().step()
                          + "': "
                          + result.end().saw());
                } catch (InstrumentFault stated) {
                  ended.set(stated.getMessage());
                } finally {
                  done.countDown();
                }
              },
              "station");
      station.setDaemon(true);
      station.start();
      boolean hung = !waitFor(done);
      boolean energised = isEnergised(pty);
      Optional<Verdict> said = verdict.get().filter(v -> v == Verdict.PASS || v == Verdict.FAIL);
      boolean wrong = truth.isPresent() && said.isPresent() && !said.equals(truth);
      // a run that neither ended nor said why it could not is no end either
      return new Came(
          hung || ended.get().isEmpty(),
          energised,
          wrong,
          verdict.get(),
          also.map(Step::kind)
              + " "
              + faults
              + " "
              + unplugged
              + ": "
              + verdict.get()
              + ", "
              + ended.get()
              + ", "
              + pty.emulated.state());
    }
  }

  private RunListener pulling(OnPty pty) {
    return new RunListener() {
      @Override
      public void step(Step step, int index, int count) {
        if (step.kind() == Step.Kind.DISCHARGE) {
          unplugged.ifPresent(pty.emulated::unplug);
        }
      }
    };
  }

  private static Optional<Verdict> verdict(Profile profile, RunResult result) {
    MeterSettings settings =
        new MeterSettings(Optional.empty(), Optional.empty(), Optional.of(48.0), Map.of());
    MeasuredRun measured =
        result
            .capture()
            .filter(c -> c.size() > 0)
            .map(c -> RunMeter.read(c, settings))
            .orElseGet(() -> new MeasuredRun(RATE_HZ, 0, "", List.of(), Map.of(), List.of()));
    Judgement judgement = Judge.judge(measured, Plans.SD48, profile, result.end());
    return judgement.verdict();
  }

  /** The board has half a second of host time before it lets go by itself. */
  private static boolean isEnergised(OnPty pty) {
    for (int i = 0; i < 100 && !isDown(pty.emulated.state()); i++) {
      Clock.system().pause(Duration.ofMillis(20));
    }
    for (int i = 0; i < 8 && pty.emulated.state().capacitor_V() >= 5; i++) {
      pty.emulated.letPass(1);
    }
    TrueState state = pty.emulated.state();
    return !isDown(state) || state.capacitor_V() >= 5;
  }

  private static boolean isDown(TrueState state) {
    return !state.relayClosed() && state.discharging();
  }

  private static boolean waitFor(CountDownLatch done) {
    try {
      return done.await(HUNG_S, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
