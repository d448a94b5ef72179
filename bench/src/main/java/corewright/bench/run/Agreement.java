package corewright.bench.run;

import corewright.bench.port.Meter;
import corewright.bench.port.Meter.Terminals;
import corewright.bench.record.RunEnd;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the digitizer reads at the unit's terminals what the meter reads, looked at once in a
 * run: live and at rest. A divider that reads low looks like a bad unit, and on that bench alone.
 */
final class Agreement {
  /** Two instruments further apart than this many combined uncertainties do not agree. */
  private static final double K = 4;

  /** Closer than this part of the level is a matter of calibration, not of a wrong lead. */
  private static final double SHARE = 0.005;

  private final Meter meter;
  private final Aside aside;
  private final BenchDescription bench;
  private final String feed;
  private final List<String> notes = new ArrayList<>();
  private boolean looked;

  /**
   * @param feed the channel at the input terminals
   */
  Agreement(Meter meter, Aside aside, BenchDescription bench, String feed) {
    this.meter = meter;
    this.aside = aside;
    this.bench = bench;
    this.feed = feed;
  }

  List<String> notes() {
    return List.copyOf(notes);
  }

  /** Looks, the first time that it is called; what is sampled meanwhile is part of the hold. */
  void look(StepKind.Station station) {
    if (looked) {
      return;
    }
    looked = true;
    for (Terminals terminals : List.of(Terminals.OUTPUT, Terminals.INPUT)) {
      Aside.Question<Measurement> question =
          aside.ask(
              () -> {
                meter.to(terminals);
                return meter.voltage();
              });
      Measurement read = AsideWait.until(question, station.sampler(), "meter");
      compare(terminals, read, station.sampler().next(), station);
    }
  }

  private void compare(
      Terminals terminals, Measurement read, FrameView view, StepKind.Station station) {
    String channel = terminals == Terminals.INPUT ? feed : "output";
    double sampled_V = Means.of(view, channel);
    double u_V = Math.hypot(read.u(), doubt_V(channel, sampled_V));
    String sentence =
        "The meter read "
            + Figures.withU(read)
            + " at the "
            + (terminals == Terminals.INPUT ? "input" : "output")
            + " where the digitizer read "
            + (Double.isFinite(sampled_V)
                ? Figures.withU(new Measurement(sampled_V, doubt_V(channel, sampled_V), Unit.VOLT))
                : "more than its range")
            + ".";
    boolean agree =
        Math.abs(sampled_V - read.value()) <= Math.max(K * u_V, SHARE * Math.abs(read.value()));
    if (!agree) {
      throw new EndOfRun(
          new RunEnd(
              RunEnd.Kind.BENCH_FAULT,
              station.step(),
              view.at_s(0),
              sentence,
              "Check the digitizer's leads, divider and calibration, and the meter's leads."));
    }
    notes.add(sentence);
  }

  private double doubt_V(String channel, double level_V) {
    Optional<BenchDescription.ChannelCalibration> known =
        bench.channels().stream().filter(c -> c.channel().equals(channel)).findFirst();
    return known
        .map(c -> Math.hypot(c.gain_rel() * (Double.isFinite(level_V) ? level_V : 0), c.offset()))
        .orElse(0.0);
  }
}
