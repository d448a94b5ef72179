package corewright.bench.run;

import corewright.bench.port.Load;
import corewright.bench.port.Source;
import corewright.profiles.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The input through the levels of a cranking, as often as asked, with a rest between: the load
 * pulses by itself from shortly after the input has fallen, and the source swings where a level
 * says so.
 */
final class CrankStep implements StepKind {
  /** Events begin so long after the input has left its first level, s (common practice). */
  static final double EVENTS_FROM_S = 0.1;

  /** At rest nothing moves; every frame is looked at, and a frame of 5 ms holds enough of these. */
  private static final double REST_HZ = 1000;

  static final String NO_EVENTS =
      "Without events: the load of this bench does not pulse by itself.";

  static final String NO_SWING =
      "Without the starter's swing: the source of this bench only stands at its level.";

  @Override
  public List<String> without(Step step, Abilities bench) {
    List<String> lacks = new ArrayList<>();
    if (step.detail().pulses().isPresent() && !bench.pulses()) {
      lacks.add(NO_EVENTS);
    }
    if (step.detail().levels().stream().anyMatch(l -> l.swing().isPresent()) && !bench.swings()) {
      lacks.add(NO_SWING);
    }
    return lacks;
  }

  private static double once_s(Step step) {
    return step.detail().levels().stream().mapToDouble(Step.Level::hold_s).sum();
  }

  @Override
  public double usual_s(Step step, RunPlan plan) {
    int repeats = step.detail().repeats();
    return BACK_S + repeats * once_s(step) + (repeats - 1) * step.detail().rest_s();
  }

  @Override
  public double most_s(Step step, RunPlan plan) {
    return Hold.allowance_s(usual_s(step, plan));
  }

  @Override
  public void run(Step step, Station station) {
    for (int repeat = 0; repeat < step.detail().repeats(); repeat++) {
      if (repeat > 0 && step.detail().rest_s() > 0) {
        rest(step, station);
      }
      new Cranked(step, station).run();
    }
    station.back(step);
  }

  private static void rest(Step step, Station station) {
    station.back(step);
    int channels = station.context().bench().digitizer().channels().size();
    Framing before = station.sampler().framing();
    double rate_Hz = Math.min(REST_HZ, before.rate_Hz());
    station.sampler().pace(Framing.of((int) rate_Hz, channels));
    station.way(step);
    station.sampler().watch(step.detail().rest_s() - BACK_S);
    station.sampler().pace(before);
  }

  /** Once through the levels. */
  private static final class Cranked {
    private final Step step;
    private final Station station;
    private final Optional<Step.Pulses> events;
    private final boolean swings;
    private boolean pulsing;
    private double fallen_s = Double.NEGATIVE_INFINITY;

    Cranked(Step step, Station station) {
      this.step = step;
      this.station = station;
      BenchInstruments bench = station.context().bench();
      events = step.detail().pulses().filter(p -> bench.load().canPulse());
      swings = bench.source().canSwing();
    }

    void run() {
      List<Step.Level> levels = step.detail().levels();
      station.way(step);
      to(levels.get(0));
      ByHand.wait(step, station); // here alone: a short level would no longer be one
      for (int i = 0; i < levels.size(); i++) {
        if (levels.get(i).judged()) {
          station.segment(step, StepKinds.of(step.kind()).most_s(step, station.context().plan()));
        } else {
          station.way(step);
        }
        if (i > 0) {
          to(levels.get(i));
        }
        fallen_s = i == 1 ? 0 : fallen_s;
        hold(levels.get(i).hold_s());
      }
      station.levels().swing(Optional.empty());
      if (pulsing) {
        station.levels().steady();
      }
    }

    private void to(Step.Level level) {
      Optional<Source.Swing> wanted =
          level
              .swing()
              .filter(s -> swings)
              .map(s -> new Source.Swing(level.input_V(), s.swing_Vpp(), s.rate_Hz()));
      station.levels().still(wanted);
      if (pulsing) {
        station.levels().source(level.input_V(), step.inputLimit_A());
      } else {
        station.levels().to(level.input_V(), step.inputLimit_A(), step.load_A());
      }
      station.levels().swing(wanted);
    }

    private void hold(double hold_s) {
      double before_s = EVENTS_FROM_S - fallen_s;
      if (events.isPresent() && !pulsing && before_s < hold_s) {
        station.sampler().watch(before_s);
        pulse(events.get());
        station.sampler().watch(hold_s - before_s);
      } else {
        station.sampler().watch(hold_s);
      }
      fallen_s += hold_s;
    }

    private void pulse(Step.Pulses p) {
      int most = (int) Math.ceil(once_s(step) * p.rate_Hz());
      station
          .levels()
          .pulse(new Load.Pulses(step.load_A(), p.high_A(), p.width_s(), 1 / p.rate_Hz(), most));
      pulsing = true;
    }
  }
}
