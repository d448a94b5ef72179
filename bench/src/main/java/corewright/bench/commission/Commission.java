package corewright.bench.commission;

import corewright.bench.commission.WiringSeen.MeterSaid;
import corewright.bench.commission.WiringSeen.SourceSaid;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Meter;
import corewright.bench.port.Meter.Terminals;
import corewright.bench.run.Aside;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.Framing;
import corewright.bench.run.SafeState;
import corewright.bench.run.Stop;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Puts a few volts through the resistor that stands in the place of a unit, reads them with all
 * that the bench has, and leaves it in the safe state whatever happens.
 */
public final class Commission {
  /** Above this something is still charged, or a unit is on the bench after all, V. */
  private static final double DEAD_V = 2;

  /** Whole periods of 50 Hz and of 60 Hz: hum is in the noise and not in the mean. */
  private static final double READ_S = 0.1;

  private static final double SETTLE_S = 0.1;

  /** A person who sets the load has so long. */
  private static final double BY_HAND_S = 120;

  /** Longer reading on a digitizer that is slow, samples. */
  private static final int LEAST_SAMPLES = 20;

  private final BenchInstruments bench;
  private final Plug plug;
  private final Clock clock;
  private final Stop stop;

  /**
   * @param bench opened; no unit is on it
   */
  public Commission(BenchInstruments bench, Plug plug, Clock clock, Stop stop) {
    this.bench = bench;
    this.plug = plug;
    this.clock = clock;
    this.stop = stop;
  }

  /**
   * Reads the resistor at rest, with the supply on, and with the load drawing.
   *
   * @param framing how it is sampled
   * @throws InstrumentFault if an instrument fails, the chain is open, or something is charged
   */
  public WiringSeen wiring(Framing framing) {
    Watch watch = new Watch(bench, framing, clock, stop);
    double read_s = Math.max(READ_S, (double) LEAST_SAMPLES / framing.rate_Hz());
    try (Aside aside = new Aside("commission", bench)) {
      return thenOff(watch, () -> wiring(watch, read_s, aside));
    }
  }

  private WiringSeen wiring(Watch watch, double read_s, Aside aside) {
    Map<String, Spread> rest = rest(watch, read_s);
    powerUp(watch);
    watch.pass(SETTLE_S);
    Map<String, Spread> idle = watch.read(read_s);
    Measurement idle_V = bench.source().voltage();
    Measurement idle_A = bench.source().current();
    Optional<MeterSaid> meter = bench.meter().map(m -> meter(m, aside, watch));
    meter.ifPresent(Commission::noUnit);
    draw(plug.load_A());
    if (bench.load().isSetByHand()) {
      watch.untilMoved("load", idle, BY_HAND_S);
    }
    watch.pass(SETTLE_S);
    Map<String, Spread> loaded = watch.read(read_s);
    Measurement loaded_A = bench.source().current();
    Optional<Measurement> load =
        bench.load().isSetByHand() ? Optional.empty() : Optional.of(bench.load().current());
    return new WiringSeen(
        plug, rest, idle, loaded, new SourceSaid(idle_V, idle_A, loaded_A), load, meter);
  }

  /** What the channels read with everything off and the discharge resistor connected. */
  public Map<String, Spread> noise(Framing framing, double seconds) {
    Watch watch = new Watch(bench, framing, clock, stop);
    return thenOff(watch, () -> rest(watch, seconds));
  }

  /**
   * Makes the output fall as a fault does, time and again, and takes everything off when a frame
   * shows it: the load draws five times as much, or, where it is set by hand, the supply halves.
   *
   * @param trials how often
   */
  public List<TripTime> trips(Framing framing, int trials) {
    List<TripTime> times = new ArrayList<>();
    for (int i = 0; i < trials; i++) {
      Watch watch = new Watch(bench, framing, clock, stop);
      times.add(thenOff(watch, () -> trip(watch)));
    }
    return times;
  }

  private TripTime trip(Watch watch) {
    Map<String, Spread> rest = rest(watch, READ_S);
    powerUp(watch);
    boolean byHand = bench.load().isSetByHand();
    draw(byHand ? plug.load_A() : plug.load_A() / 5);
    if (byHand) {
      watch.untilMoved("load", rest, BY_HAND_S);
    }
    watch.pass(SETTLE_S);
    return new FaultToOff(bench, watch, rest, plug.load_A())
        .time(
            () -> {
              if (byHand) {
                bench.source().set(plug.supply_V() / 2, plug.limit_A());
              } else {
                bench.load().set(plug.load_A());
              }
            });
  }

  private Map<String, Spread> rest(Watch watch, double seconds) {
    List<String> unsafe = SafeState.take(bench);
    Status status = bench.relay().heartbeat();
    if (!unsafe.isEmpty() || !status.interlockWhole() || !bench.interlock().whole()) {
      throw new InstrumentFault(
          "bench",
          "before anything is energised",
          unsafe.isEmpty() ? "the interlock chain is open" : String.join(" ", unsafe),
          "Mend that first: close the cover, release the stop button, plug the instrument in.");
    }
    watch.begin();
    watch.pass(SETTLE_S);
    Map<String, Spread> rest = watch.read(seconds);
    rest.forEach(
        (channel, read) -> {
          boolean charged = channel.equals("input") || channel.equals("output");
          if (charged && Math.abs(read.mean()) > DEAD_V) {
            throw new InstrumentFault(
                "bench",
                "before anything is energised",
                "the channel " + channel + " reads " + Figures.number(read.mean(), 2) + " V",
                "Take the unit off, discharge what is charged, and check the channel's zero.");
          }
        });
    return rest;
  }

  private void powerUp(Watch watch) {
    bench.source().protect(plug.over_V(), plug.over_A());
    bench.discharge().discharge(false);
    bench.source().set(0, plug.limit_A());
    watch.live(true);
    bench.relay().relay(true);
    bench.source().output(true);
    bench.source().set(plug.supply_V(), plug.limit_A());
  }

  private void draw(double ampere) {
    bench.load().set(ampere);
    bench.load().input(true);
  }

  private MeterSaid meter(Meter meter, Aside aside, Watch watch) {
    return new MeterSaid(
        watch.until(aside.ask(() -> at(meter, Terminals.INPUT)), "meter"),
        watch.until(aside.ask(() -> at(meter, Terminals.OUTPUT)), "meter"));
  }

  /** No resistor lifts the output above the input; a unit that has started does. */
  private static void noUnit(MeterSaid said) {
    if (said.output_V().value() > said.input_V().value() + DEAD_V) {
      throw new InstrumentFault(
          "bench",
          "with the supply on",
          "the meter reads "
              + Figures.withU(said.output_V())
              + " at the output and "
              + Figures.withU(said.input_V())
              + " at the input, which no resistor can do",
          "A unit is on the fixture, and may still be charged: measure before you touch it, take it"
              + " off, put the resistor in its place and begin again. If there is none, look at the"
              + " meter's leads.");
    }
  }

  private static Measurement at(Meter meter, Terminals terminals) {
    meter.to(terminals);
    return meter.voltage();
  }

  /** Whatever became of it, everything is off then; both are told where both went wrong. */
  private <T> T thenOff(Watch watch, Supplier<T> what) {
    String before = "";
    try {
      return what.get();
    } catch (RuntimeException ended) {
      before = " Before that: " + ended.getMessage();
      throw ended;
    } finally {
      off(watch, before);
    }
  }

  private void off(Watch watch, String before) {
    watch.live(false);
    List<String> unsafe = SafeState.take(bench);
    try {
      bench.digitizer().stop();
    } catch (InstrumentFault gone) {
      // what it was, is being told already; the safe state has been commanded
    }
    if (!unsafe.isEmpty()) {
      throw new InstrumentFault(
          "bench",
          "leaving it in the safe state",
          String.join(" ", unsafe) + before,
          "Press the stop button, switch the source off by hand, and measure before you touch.");
    }
  }
}
