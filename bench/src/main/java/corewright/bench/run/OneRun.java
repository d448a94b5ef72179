package corewright.bench.run;

import corewright.bench.capture.RawWriter;
import corewright.bench.port.Identities;
import corewright.bench.port.Instrument;
import corewright.bench.port.InstrumentFault;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.profiles.Family;
import corewright.profiles.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** One run from beginning to end. Used once, on one thread. */
final class OneRun {
  private final RunPlan plan;
  private final BenchInstruments bench;
  private final RunListener listener;
  private final Clock clock;
  private final Recording recording;
  private final RunContext context;
  private LeftOpen open;

  private final List<EquipmentUsed> equipment = new ArrayList<>();
  private final List<String> troubles = new ArrayList<>();
  private List<GuardFinding> guards = List.of();
  private Optional<Recording.Sealed> sealed = Optional.empty();
  private Beside beside = new Beside(List.of(), "nothing was sampled.", 0, Map.of(), List.of());

  OneRun(
      RunPlan plan,
      BenchInstruments bench,
      RunListener listener,
      Stop stop,
      Clock clock,
      Recording recording) {
    this.plan = plan;
    this.bench = bench;
    this.listener = listener;
    this.clock = clock;
    this.recording = recording;
    Framing framing = Framing.of(plan.profile(), bench.digitizer().channels().size());
    this.context = new RunContext(plan, bench, framing, listener, stop, clock);
    this.open = new LeftOpen(plan);
  }

  RunResult from(Instant started) {
    RunEnd end = refusal().orElseGet(this::sampled);
    tell(() -> listener.ended(end));
    return new RunResult(
        recording.run(),
        end,
        source(),
        started,
        clock.wall(),
        equipment,
        guards,
        sealed.flatMap(Recording.Sealed::holds),
        sealed.map(Recording.Sealed::file),
        sealed.map(Recording.Sealed::sha256).orElse(""),
        troubles,
        beside);
  }

  /** Who is there, everything off, every guard asked: why the run may not begin. */
  private Optional<RunEnd> refusal() {
    Optional<RunEnd> unknown = identities();
    troubles.addAll(SafeState.take(bench));
    if (unknown.isPresent()) {
      return unknown;
    }
    guards = Guards.ask(plan, bench);
    listener.guarded(guards);
    return troubles.stream()
        .map(t -> fault("", 0, t, "Put that right before anything is powered."))
        .findFirst()
        .or(
            () ->
                guards.stream()
                    .filter(g -> !g.passed())
                    .map(g -> fault("", 0, g.saw(), g.remedy()))
                    .findFirst());
  }

  private Optional<RunEnd> identities() {
    try {
      for (Instrument instrument : bench.all()) {
        equipment.add(
            new EquipmentUsed(
                instrument.role(),
                instrument.identity(),
                plan.bench()
                    .instrument(instrument.role())
                    .map(Connection::calibration)
                    .orElse("not calibrated")));
      }
      channels();
      return Optional.empty();
    } catch (RuntimeException unknown) {
      return Optional.of(fault("", 0, unknown));
    }
  }

  /** A channel that was calibrated by itself has a day of its own, which a certificate asks for. */
  private void channels() {
    String identity = bench.digitizer().identity();
    plan.bench().channels().stream()
        .filter(c -> c.calibration().contains("due "))
        .map(c -> new EquipmentUsed("channel " + c.channel(), identity, c.calibration()))
        .forEach(equipment::add);
    plan.bench()
        .contacts()
        .filter(c -> c.checked().contains("due "))
        .map(c -> new EquipmentUsed("contacts of the fixture", identity, c.checked()))
        .ifPresent(equipment::add);
  }

  private RunEnd sampled() {
    RunEnd end;
    Aids aids = new Aids(plan, bench, listener::caseAt);
    try (RawWriter raw = recording.raw(bench, context.framing())) {
      Levels levels = new Levels(bench);
      Sampler sampler = new Sampler(context, raw, levels::load_A, aids.trips());
      end = steps(sampler, levels, aids).get();
      if (end.kind() != RunEnd.Kind.COMPLETED) {
        proveDischarged(sampler, levels);
      } else if (!troubles.isEmpty()) {
        end = fault("", end.at_s(), troubles.get(0), "Treat the unit as charged.");
      }
      attempt("Stopping the digitizer", bench.digitizer()::stop);
      raw.end(end);
    } catch (RuntimeException disk) {
      end = fault("", 0, disk);
    } finally {
      aids.close();
    }
    beside = aids.readings();
    attempt("Sealing the capture", () -> sealed = Optional.of(recording.seal(open)));
    beside = beside.and(sealed.map(Recording.Sealed::steps).orElse(Map.of()), open.sentences());
    return end;
  }

  /**
   * Runs the profile. However it is left, the safe state has been commanded; how it ended is put
   * into words after that.
   */
  private Supplier<RunEnd> steps(Sampler sampler, Levels levels, Aids aids) {
    String step = "";
    try {
      open = LeftOpen.by(plan, bench);
      protect();
      bench.digitizer().start(context.framing().rate_Hz(), context.framing().samples());
      listener.sampling(bench.digitizer().channels(), context.framing().rate_Hz());
      List<Step> steps = plan.profile().steps();
      for (int i = 0; i < steps.size(); i++) {
        step = steps.get(i).id();
        listener.step(steps.get(i), i, steps.size());
        if (open.has(steps.get(i))) {
          continue;
        }
        StepKind kind = StepKinds.of(steps.get(i).kind());
        sampler.pace(framing(steps.get(i)));
        sampler.step(step, steps.get(i).kind().name(), kind.most_s(steps.get(i), plan));
        kind.run(steps.get(i), new StepKind.Station(context, sampler, levels, aids, step));
      }
      RunEnd end = RunEnd.completed(sampler.at_s());
      return () -> end;
    } catch (EndOfRun ended) {
      return ended::end;
    } catch (RuntimeException broken) {
      RunEnd end = fault(step, sampler.at_s(), broken);
      return () -> end;
    } finally {
      // Before anything else, and also when the virtual machine itself gives up.
      List<String> unconfirmed = SafeState.take(bench);
      troubles.addAll(unconfirmed);
      tell(() -> listener.safe(unconfirmed));
    }
  }

  /** Whoever follows the run and fails now must not keep the discharge or the result from it. */
  private static void tell(Runnable said) {
    try {
      said.run();
    } catch (RuntimeException deaf) {
      // The result has all of it, and nothing is left to be switched off.
    }
  }

  private Framing framing(Step step) {
    return StepKinds.of(step.kind())
        .rate_Hz(step)
        .map(rate_Hz -> Framing.of(rate_Hz.intValue(), bench.digitizer().channels().size()))
        .orElse(context.framing());
  }

  /** The instruments' own protection, before any output is on. */
  private void protect() {
    Family family = plan.family();
    bench.source().protect(family.inputCeiling_V(), family.abort().inputOver_A());
  }

  private void proveDischarged(Sampler sampler, Levels levels) {
    attempt("Keeping the last frame", sampler::wayOut);
    levels.forget();
    attempt(
        "Verifying the discharge",
        () -> {
          sampler.step(
              "safe",
              Step.Kind.DISCHARGE.name(),
              Hold.allowance_s(plan.family().discharge().within_s()));
          new DischargeProof(sampler, bench, plan.family().discharge())
              .falls()
              .ifPresent(troubles::add);
        });
    attempt(
        "Asking the source",
        () -> SourceLeft.on(bench.source(), levels.most_V()).ifPresent(troubles::add));
  }

  private void attempt(String what, Runnable action) {
    troubles.addAll(new Attempts().attempt(what, action).troubles());
  }

  private Source source() {
    boolean emulated = equipment.stream().anyMatch(e -> Identities.isEmulated(e.identity()));
    return emulated ? Source.EMULATED : Source.BENCH;
  }

  private static RunEnd fault(String step, double at_s, RuntimeException broken) {
    return broken instanceof InstrumentFault known
        ? fault(
            step,
            at_s,
            known.instrument() + ": " + known.doing() + ": " + known.found() + ".",
            known.remedy())
        : fault(
            step,
            at_s,
            "The station itself failed: " + broken + ".",
            "Report this with the capture; nothing is said about the unit.");
  }

  private static RunEnd fault(String step, double at_s, String saw, String remedy) {
    return new RunEnd(RunEnd.Kind.BENCH_FAULT, step, at_s, saw, remedy);
  }
}
