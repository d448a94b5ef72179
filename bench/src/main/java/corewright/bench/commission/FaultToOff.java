package corewright.bench.commission;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.InstrumentFault;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.SafeState;
import java.util.List;
import java.util.Map;

/** Times one fault, by the count of samples: the same way that a run sees and ends one. */
final class FaultToOff {
  /** The output has fallen by this share of what it was: that is the fault. */
  private static final double FALLEN = 0.2;

  /** Less than this share of the current before is none. */
  private static final double NOTHING = 0.1;

  /** So many standard deviations of its noise are no current either. */
  private static final double NOISE = 6;

  private static final List<String> CURRENTS = List.of("inputCurrent", "load");

  private static final double PATIENCE_S = 2;
  private static final Spread NONE = new Spread(0, 0, 0, "", 0, false);

  private final BenchInstruments bench;
  private final Watch watch;
  private final Map<String, Spread> rest;
  private final double flowing_A;

  /**
   * @param rest what the channels read with everything off
   * @param flowing_A what flows when the fault is there
   */
  FaultToOff(BenchInstruments bench, Watch watch, Map<String, Spread> rest, double flowing_A) {
    this.bench = bench;
    this.watch = watch;
    this.rest = rest;
    this.flowing_A = flowing_A;
  }

  /**
   * @param fault what makes the output fall
   */
  TripTime time(Runnable fault) {
    double before_V = Math.abs(watch.read(0.05).getOrDefault("output", NONE).mean());
    fault.run();
    long seen = fallen(before_V);
    List<String> unsafe = SafeState.take(bench);
    if (!unsafe.isEmpty()) {
      throw fault("taking everything off", String.join(" ", unsafe));
    }
    watch.live(false);
    long off = nothingFlows();
    double period_s = 1.0 / watch.rate_Hz();
    return new TripTime(Math.max(0, off - seen) * period_s, 2 * period_s);
  }

  /** Index of the first sample with the fault. */
  private long fallen(double before_V) {
    long patience = Math.round(PATIENCE_S * watch.rate_Hz());
    for (long taken = 0; taken < patience; ) {
      Digitizer.Frame frame = watch.next();
      for (int i = 0; i < frame.samples(); i++) {
        if (Math.abs(value("output", frame, i)) < (1 - FALLEN) * before_V) {
          return frame.first() + i;
        }
      }
      taken += frame.samples();
    }
    throw fault("waiting for the output to fall", "it never did");
  }

  /** Index of the first sample from which on a whole frame shows no current, all reported off. */
  private long nothingFlows() {
    if (CURRENTS.stream().noneMatch(rest::containsKey)) {
      throw fault("waiting until nothing flows", "the digitizer has no channel for a current");
    }
    long since = -1;
    long patience = Math.round(PATIENCE_S * watch.rate_Hz());
    for (long taken = 0; taken < patience; ) {
      Digitizer.Frame frame = watch.next();
      for (int i = 0; i < frame.samples(); i++) {
        since = flows(frame, i) ? -1 : since < 0 ? frame.first() + i : since;
      }
      boolean off = !frame.status().relayClosed() && frame.status().discharging();
      if (since >= 0 && since <= frame.first() && off) {
        return since;
      }
      taken += frame.samples();
    }
    throw fault("waiting until nothing flows", "something still does, or the relay is closed");
  }

  private boolean flows(Digitizer.Frame frame, int sample) {
    return CURRENTS.stream()
        .filter(rest::containsKey)
        .anyMatch(
            name -> {
              Spread quiet = rest.getOrDefault(name, NONE);
              double least = Math.max(NOTHING * flowing_A, NOISE * quiet.sd());
              return Math.abs(value(name, frame, sample) - quiet.mean()) > least;
            });
  }

  private double value(String name, Digitizer.Frame frame, int sample) {
    List<Channel> channels = bench.digitizer().channels();
    int c = channels.stream().map(Channel::name).toList().indexOf(name);
    if (c < 0) {
      throw fault("looking for the channel " + name, "the digitizer has none");
    }
    return channels.get(c).offset() + channels.get(c).lsb() * frame.codes()[c][sample];
  }

  private static InstrumentFault fault(String doing, String found) {
    return new InstrumentFault(
        "bench", doing, found, "Press the stop button; look at the wiring of load and relay.");
  }
}
