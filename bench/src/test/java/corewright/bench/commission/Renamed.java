package corewright.bench.commission;

import corewright.bench.port.Digitizer;
import java.time.Duration;
import java.util.List;

/** A digitizer whose channels of current are called otherwise. */
record Renamed(Digitizer digitizer) implements Digitizer {
  @Override
  public List<Channel> channels() {
    return digitizer.channels().stream()
        .map(
            c ->
                c.unit().equals("A")
                    ? new Channel("my " + c.name(), c.unit(), c.lsb(), c.offset())
                    : c)
        .toList();
  }

  @Override
  public double bytesPerSecond(int rate_Hz, int samplesPerFrame) {
    return digitizer.bytesPerSecond(rate_Hz, samplesPerFrame);
  }

  @Override
  public void start(int rate_Hz, int samplesPerFrame) {
    digitizer.start(rate_Hz, samplesPerFrame);
  }

  @Override
  public Frame next(Duration patience) {
    return digitizer.next(patience);
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
  public void close() {
    digitizer.close();
  }
}
