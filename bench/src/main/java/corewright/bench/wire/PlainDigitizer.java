package corewright.bench.wire;

import corewright.bench.port.Digitizer;
import corewright.fixtures.describe.Samples;
import java.time.Duration;
import java.util.List;

/**
 * A digitizer that only samples. How the fixture stands is asked of the relay box beside it, every
 * tenth of a second of samples.
 */
final class PlainDigitizer implements Digitizer {
  private static final double ASKED_EVERY_S = 0.1;

  private final String role;
  private final Samples samples;
  private final Scans scans;
  private final ScpiRelay relay;
  private int rate_Hz = 1;
  private long askedAt;
  private long end;

  PlainDigitizer(String role, Samples samples, Scans scans, ScpiRelay relay) {
    this.role = role;
    this.samples = samples;
    this.scans = scans;
    this.relay = relay;
  }

  @Override
  public String role() {
    return role;
  }

  @Override
  public String identity() {
    return scans.identity();
  }

  @Override
  public List<Channel> channels() {
    return scans.channels();
  }

  @Override
  public int most_Hz() {
    return (int) samples.most_Hz();
  }

  @Override
  public double bytesPerSecond(int rate, int samplesPerFrame) {
    return samples.bytesPerSecond(rate, samplesPerFrame);
  }

  @Override
  public void start(int rate, int samplesPerFrame) {
    scans.stop(); // it may still be sampling for a station that is no more
    rate_Hz = rate;
    askedAt = Long.MIN_VALUE / 2;
    end = 0;
    scans.start(rate, samplesPerFrame);
  }

  @Override
  public Frame next(Duration patience) {
    Scans.Batch batch = scans.next(patience);
    boolean lost = batch.first() > end;
    end = batch.first() + batch.codes()[0].length;
    if (end - askedAt >= ASKED_EVERY_S * rate_Hz) {
      relay.heartbeat();
      askedAt = end;
    }
    return new Frame(
        batch.first(), status(batch.codes(), lost, relay.heard()), batch.codes(), batch.broken());
  }

  private static Status status(short[][] codes, boolean lost, Status heard) {
    return new Status(
        heard.interlockWhole(),
        heard.relayClosed(),
        heard.discharging(),
        isOverRange(codes),
        lost,
        heard.watchdogTripped());
  }

  private static boolean isOverRange(short[][] codes) {
    for (short[] channel : codes) {
      for (short code : channel) {
        if (code == Short.MAX_VALUE || code == Short.MIN_VALUE) {
          return true;
        }
      }
    }
    return false;
  }

  @Override
  public boolean waits() {
    return scans.waits();
  }

  @Override
  public void stop() {
    scans.stop();
  }

  @Override
  public void off() {
    scans.off();
  }

  @Override
  public void close() {
    scans.close();
  }
}
