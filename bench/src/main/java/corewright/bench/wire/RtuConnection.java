package corewright.bench.wire;

import com.ghgande.j2mod.modbus.io.AbstractModbusTransport;
import com.ghgande.j2mod.modbus.io.ModbusRTUTransport;
import com.ghgande.j2mod.modbus.net.AbstractSerialConnection;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Characters;
import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.Arrays;
import java.util.Set;

/**
 * Our own line as the Modbus library wants it: it never sees the serial library, nor its ports. An
 * answer is waited for until {@code patience} after its question, however it is cut up.
 */
final class RtuConnection extends AbstractSerialConnection {
  private static final int DATA_BITS = 8;

  /** A line that has said nothing for this long has nothing more to say. */
  private static final Duration QUIET = Duration.ofMillis(50);

  private static final int MOST_CHUNKS = 100;

  private final Link link;
  private final int baud;
  private final Characters characters;
  private final Duration patience;
  private final Clock clock;
  private final byte[] chunk = new byte[512];
  private final ByteArrayOutputStream came = new ByteArrayOutputStream();
  private byte[] held = {};
  private long deadline;
  private boolean late;
  private boolean closed;

  RtuConnection(Link link, int baud, Characters characters, Duration patience, Clock clock) {
    this.link = link;
    this.baud = baud;
    this.characters = characters;
    this.patience = patience;
    this.clock = clock;
  }

  /** The bytes that were taken since the last question. */
  byte[] came() {
    return came.toByteArray();
  }

  /** Whether the answer to the last question did not come to its end in time. */
  boolean isLate() {
    return late;
  }

  /** Throws away what is on its way, until the line is quiet. */
  void settle() {
    held = new byte[0];
    for (int i = 0; i < MOST_CHUNKS; i++) { // a line that never stops talking must not hold us
      if (link.read(chunk, QUIET) == 0) {
        return;
      }
    }
  }

  @Override
  public int readBytes(byte[] into, int wanted) {
    while (held.length < wanted) {
      long left = deadline - clock.nanos();
      if (left <= 0) {
        late = true;
        break;
      }
      hold(Duration.ofNanos(left));
    }
    int count = Math.min(wanted, held.length);
    System.arraycopy(held, 0, into, 0, count);
    came.write(held, 0, count);
    held = Arrays.copyOfRange(held, count, held.length);
    return count;
  }

  private void hold(Duration within) {
    int count = link.read(chunk, within);
    int before = held.length;
    held = Arrays.copyOf(held, before + count);
    System.arraycopy(chunk, 0, held, before, count);
  }

  @Override
  public int writeBytes(byte[] bytes, int count) {
    came.reset();
    late = false;
    link.write(Arrays.copyOf(bytes, count), patience);
    deadline = clock.nanos() + patience.toNanos();
    return count;
  }

  /** Whatever has come unasked; the library throws it away before it asks. */
  @Override
  public int bytesAvailable() {
    hold(Duration.ZERO);
    return held.length;
  }

  @Override
  public void open() {}

  @Override
  public boolean isOpen() {
    return !closed;
  }

  @Override
  public void close() {
    closed = true;
    link.close();
  }

  @Override
  public AbstractModbusTransport getModbusTransport() {
    return new ModbusRTUTransport();
  }

  @Override
  public int getBaudRate() {
    return baud;
  }

  @Override
  public int getNumDataBits() {
    return DATA_BITS;
  }

  @Override
  public int getNumStopBits() {
    return characters == Characters.NONE_2 ? TWO_STOP_BITS : ONE_STOP_BIT;
  }

  @Override
  public int getParity() {
    return switch (characters) {
      case NONE_1, NONE_2 -> NO_PARITY;
      case EVEN_1 -> EVEN_PARITY;
      case ODD_1 -> ODD_PARITY;
    };
  }

  @Override
  public String getPortName() {
    return link.name();
  }

  @Override
  public String getDescriptivePortName() {
    return link.name();
  }

  /** The line has its own patience. */
  @Override
  public void setComPortTimeouts(int mode, int read, int write) {}

  @Override
  public int getTimeout() {
    return Math.toIntExact(patience.toMillis());
  }

  @Override
  public void setTimeout(int timeout) {}

  @Override
  public Set<String> getCommPorts() {
    return Set.of();
  }
}
