package corewright.bench.zoo;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.run.FakeClock;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.emulate.line.Served;
import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.Map;

/**
 * Lines that are memory: the drivers' bytes go straight to the emulated instruments and theirs
 * straight back, on one thread. The same bytes as on a serial port, without one.
 */
public final class MemoryLinks implements Links {
  private final Map<String, Served> served;
  private final FakeClock clock;

  public MemoryLinks(Map<String, Served> served, FakeClock clock) {
    this.served = served;
    this.clock = clock;
  }

  @Override
  public Link open(String role, String port, int baud, Characters characters) {
    Served instrument = served.get(role);
    if (instrument == null) {
      throw new InstrumentFault(role, "opening", "nothing is plugged in", "Emulate that role too.");
    }
    return new MemoryLink(role, instrument, clock);
  }

  private static final class MemoryLink implements Link, Served.Sender {
    private final String role;
    private final Served instrument;
    private final FakeClock clock;
    private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();
    private boolean gone;

    MemoryLink(String role, Served instrument, FakeClock clock) {
      this.role = role;
      this.instrument = instrument;
      this.clock = clock;
    }

    @Override
    public String name() {
      return "memory:" + role;
    }

    @Override
    public void write(byte[] bytes, Duration patience) {
      lost();
      instrument.received(bytes, bytes.length, this);
    }

    @Override
    public int read(byte[] into, Duration patience) {
      lost();
      if (waiting.size() == 0) {
        instrument.idle(this);
      }
      if (waiting.size() == 0) {
        clock.pause(patience.plusNanos(1));
        return 0;
      }
      byte[] all = waiting.toByteArray();
      int n = Math.min(all.length, into.length);
      System.arraycopy(all, 0, into, 0, n);
      waiting.reset();
      waiting.write(all, n, all.length - n);
      return n;
    }

    private void lost() {
      if (gone) {
        throw new InstrumentFault(role, "speaking", "the line is gone", "Plug it in again.");
      }
    }

    @Override
    public void send(byte[] bytes, int count) {
      waiting.write(bytes, 0, count);
    }

    @Override
    public void pause() {
      clock.pause(Duration.ofMillis(60));
    }

    @Override
    public void unplug() {
      gone = true;
    }

    @Override
    public void close() {
      gone = true;
    }
  }
}
