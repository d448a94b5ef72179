package corewright.bench.run;

import corewright.bench.capture.RawWriter;
import corewright.bench.port.Digitizer;
import corewright.bench.port.Relay;
import corewright.bench.record.RunEnd;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/**
 * The only place where frames are taken: each is held against the trips as it arrives, kept, and
 * shown. While it takes them it tells the fixture that the station is alive; a station that hangs
 * stops doing so, and the fixture lets go of the unit by itself.
 */
final class Sampler {
  /** A digitizer that says nothing for so long is dead; shorter than the fixture's hold-off. */
  private static final Duration SILENCE = Duration.ofMillis(400);

  /** Well inside the fixture's hold-off of 500 ms. */
  private static final long ALIVE_NANOS = Duration.ofMillis(150).toNanos();

  private final Digitizer digitizer;
  private final Relay relay;
  private Framing framing;
  private final Trips trips;
  private final RawWriter raw;
  private final RunListener listener;
  private final Stop stop;
  private final Clock clock;
  private final DoubleSupplier load_A;
  private final double total_s;

  private String step = "";
  private long stepEnds;
  private long heard;
  private long end;
  private double before_s;
  private boolean relayClosed;
  private boolean wayOut;
  private double highestOutput_V;
  private Optional<Digitizer.Frame> unkept = Optional.empty();

  Sampler(RunContext context, RawWriter raw, DoubleSupplier load_A, List<Trip> more) {
    this.digitizer = context.bench().digitizer();
    this.relay = context.bench().relay();
    this.framing = context.framing();
    this.trips = Trips.of(context.plan(), more);
    this.raw = raw;
    this.listener = context.listener();
    this.stop = context.stop();
    this.clock = context.clock();
    this.load_A = load_A;
    this.total_s =
        context.plan().profile().steps().stream()
            .mapToDouble(s -> StepKinds.of(s.kind()).usual_s(s, context.plan()))
            .sum();
    this.heard = clock.nanos();
  }

  /**
   * The frames that follow belong to this step.
   *
   * @param most_s longest that it may take on the host's clock, whatever the digitizer counts
   */
  void step(String id, String kind, double most_s) {
    step = id;
    raw.segment(id, kind, framing.rate_Hz());
    deadline(most_s);
  }

  /** From now on the step may take so long on the host's clock. */
  void deadline(double most_s) {
    stepEnds = clock.nanos() + (long) (most_s * 1e9);
  }

  /** Samples at another rate from here on; the digitizer begins to count again. */
  void pace(Framing other) {
    if (!other.equals(framing)) {
      before_s = at_s();
      end = 0;
      framing = other;
      digitizer.start(framing.rate_Hz(), framing.samples());
      listener.sampling(digitizer.channels(), framing.rate_Hz());
    }
  }

  /** How it samples now. */
  Framing framing() {
    return framing;
  }

  /** Takes frames for so long, s of samples. */
  void watch(double seconds) {
    long until = end + Math.round(seconds * framing.rate_Hz());
    while (end < until) {
      next();
    }
  }

  /** The relay was told to close. */
  void relayClosed() {
    relayClosed = true;
  }

  /** Everything was switched off: what remains is to watch, slowly, and nothing ends that. */
  void wayOut() {
    wayOut = true;
    relayClosed = false;
    unkept.ifPresent(this::keep);
    unkept = Optional.empty();
    pace(Framing.slow(digitizer.most_Hz()));
  }

  /** The highest that the output has read while the profile ran, V. */
  double highestOutput_V() {
    return highestOutput_V;
  }

  /** End of the last frame, samples since the start. */
  long end() {
    return end;
  }

  double at_s() {
    return before_s + (double) end / framing.rate_Hz();
  }

  /**
   * The next frame, held against every trip.
   *
   * @throws EndOfRun if a trip, a person or the host's clock ends the run
   */
  FrameView next() {
    if (!wayOut) {
      stop.requested()
          .ifPresent(why -> endRun(RunEnd.Kind.STOPPED, why, "Begin again when ready."));
    }
    long now = clock.nanos();
    if (now > stepEnds) {
      endRun(
          RunEnd.Kind.BENCH_FAULT,
          "The step took longer than its samples account for.",
          "Check the digitizer's sample rate, and that the computer is not overloaded.");
    }
    if (now - heard > ALIVE_NANOS) {
      relay.alive();
      heard = now;
    }
    Digitizer.Frame frame = digitizer.next(SILENCE);
    FrameView view =
        new FrameView(
            frame,
            digitizer.channels(),
            end,
            framing.rate_Hz(),
            before_s,
            load_A.getAsDouble(),
            relayClosed);
    Optional<Trip.Seen> seen = wayOut ? Optional.empty() : trips.look(view);
    if (seen.isPresent()) {
      unkept = Optional.of(frame); // first the safe state, then the disk
      String during = step;
      throw new EndOfRun(() -> seen.get().end(view, during));
    }
    int output = view.channel("output");
    if (!wayOut && output >= 0 && view.samples() > 0) {
      highestOutput_V = Math.max(highestOutput_V, view.value(output, 0));
    }
    keep(frame);
    listener.frame(frame);
    listener.progress(Math.min(total_s, at_s()), total_s);
    return view;
  }

  private void keep(Digitizer.Frame frame) {
    raw.frame(frame);
    end = Math.max(end, frame.first() + frame.samples());
  }

  private void endRun(RunEnd.Kind kind, String saw, String remedy) {
    throw new EndOfRun(new RunEnd(kind, step, at_s(), saw, remedy));
  }
}
