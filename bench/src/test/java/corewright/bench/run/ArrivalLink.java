package corewright.bench.run;

import corewright.bench.port.Link;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * A line that knows when its bytes came, and how long after them the relay was told to open: what
 * the station itself adds, without the way over the line and back.
 */
final class ArrivalLink implements Link {
  /** Type of the frame that sets the relay, and where its type and its payload lie; see WIRE.md. */
  private static final int RELAY = 0x86;

  private static final int TYPE = 3;
  private static final int PAYLOAD = 10;

  private final Link line;
  private final List<Long> reactions_ns = new ArrayList<>();
  private long arrived;

  ArrivalLink(Link line) {
    this.line = line;
  }

  /** From the read that brought the last bytes until the command to open was written, ns. */
  List<Long> reactions_ns() {
    return reactions_ns;
  }

  @Override
  public String name() {
    return line.name();
  }

  @Override
  public void write(byte[] bytes, Duration patience) {
    line.write(bytes, patience);
    if ((bytes[TYPE] & 0xFF) == RELAY && bytes[PAYLOAD] == 0) {
      reactions_ns.add(System.nanoTime() - arrived);
    }
  }

  @Override
  public int read(byte[] into, Duration patience) {
    int count = line.read(into, patience);
    if (count > 0) {
      arrived = System.nanoTime();
    }
    return count;
  }

  @Override
  public void close() {
    line.close();
  }
}
