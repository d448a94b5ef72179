package corewright.bench.wire;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Identities;
import corewright.bench.run.Clock;
import corewright.bench.wire.Gathered.Sample;
import corewright.fixtures.describe.Samples;
import corewright.fixtures.describe.Samples.Lines;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Samples that come as lines of text, asked for one by one or by themselves. A line carries no
 * check: one that cannot be read is missing, and one that reads as another number is not noticed.
 */
final class LineScans implements Scans {
  private final ScpiSession session;
  private final Samples samples;
  private final Lines form;
  private final ScanLine reader;
  private final Clock clock;
  private final boolean asked;
  private final boolean waits;
  private final Pace pace;
  private final Gathered gathered;

  private long lines;
  private long counted;
  private boolean streaming;

  LineScans(ScpiSession session, Samples samples, Lines form, Clock clock) {
    this.session = session;
    this.samples = samples;
    this.form = form;
    this.clock = clock;
    this.reader = new ScanLine(samples, form);
    this.asked = !samples.ask().isEmpty();
    this.waits = asked && Identities.isEmulated(session.identity());
    this.pace = new Pace(clock, waits);
    this.gathered = new Gathered(samples.channels().size());
  }

  @Override
  public String identity() {
    return session.identity();
  }

  @Override
  public List<Channel> channels() {
    return samples.channels().stream()
        .map(c -> new Channel(c.name(), c.unit(), c.lsb(), 0))
        .toList();
  }

  @Override
  public boolean waits() {
    return waits;
  }

  @Override
  public void start(int rate_Hz, int wanted) {
    gathered.start(wanted);
    lines = 0;
    counted = -1;
    Map<String, Double> values = Map.of("rate_Hz", (double) rate_Hz, "samples", (double) wanted);
    if (asked) {
      session.act("start", values);
    } else {
      streaming = true;
      session.begin("start", values);
      form.head().forEach(this::head);
    }
    pace.start(rate_Hz);
  }

  /** Somebody may have changed the instrument's units at its front panel. */
  private void head(String wanted) {
    String found =
        session
            .unasked(Duration.ofSeconds(1))
            .orElseThrow(() -> silent("its names and units", Duration.ofSeconds(1)))
            .strip();
    if (!found.equals(wanted)) {
      throw session.fault(
          "starting",
          "it begins with '" + Texts.printable(found) + "', not with '" + wanted + "'",
          "Set its channels and units as the dialect has them, or correct the dialect.");
    }
  }

  @Override
  public Batch next(Duration patience) {
    long deadline = clock.nanos() + patience.toNanos();
    return gathered.next(() -> take(deadline)).orElseThrow(() -> silent("a line", patience));
  }

  private Optional<Sample> take(long deadline) {
    while (true) {
      long at = asked ? pace.due() : lines++;
      Optional<String> line =
          asked
              ? Optional.of(session.text(samples.ask()))
              : session.unasked(Duration.ofNanos(Math.max(0, deadline - clock.nanos())));
      if (line.isEmpty()) {
        lines = at;
        return Optional.empty();
      }
      Optional<ScanLine.Scan> scan = reader.read(line.get());
      if (scan.isPresent()) {
        return Optional.of(new Sample(index(scan.get(), at), scan.get().codes()));
      }
      if (gathered.isTooMuch()) {
        throw session.fault(
            "sampling",
            "'" + Texts.printable(line.get()) + "' is no line of samples",
            "Check the line rate, and the separator and decimal mark in the dialect.");
      }
    }
  }

  private long index(ScanLine.Scan scan, long at) {
    if (scan.counter().isEmpty()) {
      return at;
    }
    long number = scan.counter().getAsLong();
    if (counted < 0) {
      counted = number;
    }
    return number - counted;
  }

  private RuntimeException silent(String what, Duration patience) {
    return session.fault(
        "waiting for " + what,
        "none came within " + patience.toMillis() + " ms",
        "Check the cable and that the digitizer is on and in remote.");
  }

  @Override
  public void stop() {
    if (asked) {
      session.act("stop", Map.of());
    } else {
      session.actAmidLines("stop");
    }
    streaming = false;
  }

  @Override
  public void off() {
    stop();
  }

  @Override
  public void close() {
    try {
      if (streaming) {
        stop();
      }
    } catch (RuntimeException alreadyGone) {
      // it samples for nobody
    } finally {
      session.close();
    }
  }
}
