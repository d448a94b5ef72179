package corewright.bench.commission;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.InstrumentFault;
import corewright.bench.run.Aside;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.Framing;
import corewright.bench.run.Stop;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Takes the frames: each tells whether the chain is whole, and the fixture hears meanwhile that the
 * station is alive.
 */
final class Watch {
  private static final Duration SILENCE = Duration.ofMillis(400);
  private static final long ALIVE_NANOS = Duration.ofMillis(150).toNanos();

  private final BenchInstruments bench;
  private final Framing framing;
  private final Clock clock;
  private final Stop stop;
  private long heard;
  private boolean live;

  Watch(BenchInstruments bench, Framing framing, Clock clock, Stop stop) {
    this.bench = bench;
    this.framing = framing;
    this.clock = clock;
    this.stop = stop;
  }

  void begin() {
    bench.digitizer().start(framing.rate_Hz(), framing.samples());
    heard = clock.nanos();
  }

  /** Whether something is on: then an open chain ends it. */
  void live(boolean on) {
    live = on;
  }

  int rate_Hz() {
    return framing.rate_Hz();
  }

  /**
   * The next frame.
   *
   * @throws InstrumentFault if the chain opened, the fixture let go, or somebody wants it to end
   */
  Digitizer.Frame next() {
    if (live) {
      stop.requested().ifPresent(why -> refuse(why, "Begin again when ready."));
    }
    if (clock.nanos() - heard > ALIVE_NANOS) {
      bench.relay().alive();
      heard = clock.nanos();
    }
    Digitizer.Frame frame = bench.digitizer().next(SILENCE);
    if (live && (!frame.status().interlockWhole() || frame.status().watchdogTripped())) {
      refuse(
          frame.status().interlockWhole()
              ? "the fixture heard nothing and let go"
              : "the interlock chain opened",
          "Close the cover, release the stop button, and begin again.");
    }
    return frame;
  }

  private static void refuse(String found, String remedy) {
    throw new InstrumentFault("bench", "while the resistor was live", found, remedy);
  }

  /** Lets time pass, s of samples. */
  void pass(double seconds) {
    for (double left = seconds; left > 0; ) {
      left -= (double) next().samples() / framing.rate_Hz();
    }
  }

  /** What the channels read for so long, s of samples. */
  Map<String, Spread> read(double seconds) {
    List<Channel> channels = bench.digitizer().channels();
    List<Sums> sums = new ArrayList<>();
    channels.forEach(c -> sums.add(new Sums()));
    for (double left = seconds; left > 0; ) {
      Digitizer.Frame frame = next();
      for (int c = 0; c < channels.size(); c++) {
        sums.get(c).add(frame.codes()[c]);
      }
      left -= (double) frame.samples() / framing.rate_Hz();
    }
    Map<String, Spread> read = new LinkedHashMap<>();
    for (int c = 0; c < channels.size(); c++) {
      read.put(channels.get(c).name(), sums.get(c).of(channels.get(c)));
    }
    return read;
  }

  /**
   * Waits until a channel has left what it read, and stays where it went for a second.
   *
   * @throws InstrumentFault if it did not in time
   */
  void untilMoved(String channel, Map<String, Spread> before, double patience_s) {
    double still_s = 0;
    double last = Double.NaN;
    for (double waited_s = 0; still_s < 1; waited_s += 0.1) {
      if (waited_s > patience_s) {
        throw new InstrumentFault(
            "load",
            "waiting until somebody has set it",
            "the channel " + channel + " has not moved",
            "Set the load when asked; look whether the channel's shunt is in the load's lead.");
      }
      Spread was = of(channel, before);
      Spread now = of(channel, read(0.1));
      boolean moved = Math.abs(now.mean() - was.mean()) > 6 * Math.max(was.sd(), was.lsb());
      boolean still = Math.abs(now.mean() - last) < 0.05 * Math.abs(now.mean() - was.mean());
      still_s = moved && still ? still_s + 0.1 : 0;
      last = now.mean();
    }
  }

  private static Spread of(String channel, Map<String, Spread> read) {
    return Optional.ofNullable(read.get(channel))
        .orElseThrow(
            () ->
                new InstrumentFault(
                    "digitizer",
                    "reading the channel " + channel,
                    "there is none",
                    "Name its channels as the bench description does."));
  }

  /** The answer of a slow instrument, while frames are taken. */
  <T> T until(Aside.Question<T> question, String role) {
    double waited_s = 0;
    while (true) {
      Optional<T> answer = question.answer();
      if (answer.isPresent()) {
        return answer.get();
      }
      if (question.isOverdue(waited_s)) {
        throw new InstrumentFault(
            role,
            "asking it",
            "it has said nothing for " + Aside.SILENCE.toSeconds() + " s",
            "Check its cable and that it is on.");
      }
      waited_s += (double) next().samples() / framing.rate_Hz();
    }
  }

  /** Sums of the integer codes are exact. */
  private static final class Sums {
    private long n;
    private long sum;
    private long squares;
    private boolean clipped;

    void add(short[] codes) {
      for (short code : codes) {
        n++;
        sum += code;
        squares += (long) code * code;
        clipped |= code == Short.MAX_VALUE || code == Short.MIN_VALUE;
      }
    }

    Spread of(Channel channel) {
      double mean = (double) sum / n;
      double variance = n > 1 ? Math.max(0, (squares - mean * sum) / (n - 1)) : 0;
      return new Spread(
          channel.offset() + channel.lsb() * mean,
          channel.lsb() * Math.sqrt(variance),
          n,
          channel.unit(),
          channel.lsb(),
          clipped);
    }
  }
}
