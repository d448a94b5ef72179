package corewright.station.demo;

import corewright.bench.port.Digitizer;
import corewright.bench.run.Clock;
import java.time.Duration;
import java.util.List;

/**
 * A digitizer whose time stands still between frames, made to go as the clock does: a frame is
 * handed over when a person beside a real bench would have it. It never hurries to make up for a
 * halt.
 */
final class PacedDigitizer implements Digitizer {
  private static final double NANOS_PER_S = 1e9;

  /** The station says that it is alive between frames, so no wait may be long. */
  private static final long LONGEST_NANOS = 100_000_000;

  private final Digitizer digitizer;
  private final Clock clock;
  private int rate_Hz = 1;
  private long due;

  PacedDigitizer(Digitizer digitizer, Clock clock) {
    this.digitizer = digitizer;
    this.clock = clock;
  }

  @Override
  public void start(int rate, int samplesPerFrame) {
    digitizer.start(rate, samplesPerFrame);
    rate_Hz = rate;
    due = clock.nanos();
  }

  @Override
  public Frame next(Duration patience) {
    Frame frame = digitizer.next(patience);
    due += (long) (frame.samples() * NANOS_PER_S / rate_Hz);
    long now = clock.nanos();
    if (due > now) {
      clock.pause(Duration.ofNanos(Math.min(due - now, LONGEST_NANOS)));
    } else {
      due = Math.max(due, now - LONGEST_NANOS);
    }
    return frame;
  }

  @Override
  public String role() {
    return digitizer.role();
  }

  @Override
  public String identity() {
    return digitizer.identity();
  }

  @Override
  public void off() {
    digitizer.off();
  }

  @Override
  public List<Channel> channels() {
    return digitizer.channels();
  }

  @Override
  public int most_Hz() {
    return digitizer.most_Hz();
  }

  @Override
  public double bytesPerSecond(int rate, int samplesPerFrame) {
    return digitizer.bytesPerSecond(rate, samplesPerFrame);
  }

  @Override
  public boolean waits() {
    return digitizer.waits();
  }

  @Override
  public void stop() {
    digitizer.stop();
  }

  @Override
  public void close() {
    digitizer.close();
  }
}
