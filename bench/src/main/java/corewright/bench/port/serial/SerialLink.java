package corewright.bench.port.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.PortInfo;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Characters;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * One serial port, and the only class that knows the serial library. Wraps what the library leaves
 * to its user; each place says what.
 */
final class SerialLink implements Link {
  /** The library rounds read timeouts to this, and longer ones can wrap: so no other is used. */
  private static final Duration SLICE = Duration.ofMillis(100);

  private static final Duration TICK = Duration.ofMillis(1);

  private static final int DATA_BITS = 8;

  private static final int SAME_PROCESS = 2;
  private static final int OTHER_PROCESS = 11;
  private static final int NO_PERMISSION = 13;

  static {
    NativeFolder.around(SerialPort::getVersion);
  }

  private final String role;
  private final String name;
  private final SerialPort port;
  private final Clock clock;
  private volatile boolean closed;

  private SerialLink(String role, String name, SerialPort port, Clock clock) {
    this.role = role;
    this.name = name;
    this.port = port;
    this.clock = clock;
  }

  static List<PortInfo> list() {
    return Stream.of(SerialPort.getCommPorts())
        .map(
            p ->
                new PortInfo(
                    p.getSystemPortPath(),
                    p.getDescriptivePortName(),
                    p.getVendorID() < 0
                        ? ""
                        : String.format(
                            Locale.ROOT, "%04x:%04x", p.getVendorID(), p.getProductID()),
                    p.getSerialNumber().equals("Unknown") ? "" : p.getSerialNumber()))
        .toList();
  }

  static SerialLink open(String role, String name, int baud, Characters characters, Clock clock) {
    String opening = "opening " + name;
    if (!PortPath.exists(name)) {
      throw noSuchPort(role, opening);
    }
    SerialPort port;
    try {
      port = SerialPort.getCommPort(name);
    } catch (SerialPortInvalidPortException unknown) {
      throw noSuchPort(role, opening);
    }
    if (!PortPath.same(name, port.getSystemPortPath())) {
      throw noSuchPort(role, opening);
    }
    // All settings before opening: setters on an open port rewrite its terminal settings.
    port.setComPortParameters(baud, DATA_BITS, stopBits(characters), parity(characters));
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    port.setComPortTimeouts(
        SerialPort.TIMEOUT_READ_SEMI_BLOCKING, Math.toIntExact(SLICE.toMillis()), 0);
    port.flushIOBuffers(); // bytes that came before the port was opened belong to nobody
    if (!port.openPort()) {
      int code = port.getLastErrorCode();
      port.closePort();
      throw refused(role, opening, code);
    }
    return new SerialLink(role, name, port, clock);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int read(byte[] into, Duration patience) {
    long deadline = clock.nanos() + patience.toNanos();
    while (true) {
      long begun = clock.nanos();
      int count = deadline - begun >= SLICE.toNanos() ? readSlice(into) : readWaiting(into);
      if (closed || count < 0) {
        throw lost("reading from " + name);
      }
      if (count > 0) {
        return count;
      }
      long now = clock.nanos();
      if (now >= deadline) {
        return 0;
      }
      if (now - begun < TICK.toNanos()) {
        clock.pause(TICK); // an empty read that comes back at once must not burn a core
      }
    }
  }

  private int readSlice(byte[] into) {
    return port.readBytes(into, into.length);
  }

  private int readWaiting(byte[] into) {
    int waiting = port.bytesAvailable();
    return waiting <= 0 ? waiting : port.readBytes(into, Math.min(waiting, into.length));
  }

  @Override
  public void write(byte[] bytes, Duration patience) {
    String doing = "writing to " + name;
    if (closed) {
      throw lost(doing);
    }
    boolean stuck = WriteWatch.over(() -> writeAll(bytes, doing), patience, this::close);
    if (stuck) {
      throw new InstrumentFault(
          role,
          doing,
          bytes.length + " bytes were not taken within " + patience.toMillis() + " ms",
          "The instrument has stopped listening: switch it off and on, and check flow control.");
    }
  }

  private void writeAll(byte[] bytes, String doing) {
    int done = 0;
    while (done < bytes.length && !closed) {
      int count = port.writeBytes(bytes, bytes.length - done, done);
      if (count <= 0 && !closed) { // a line that hung up takes 0 bytes, for ever
        throw lost(doing);
      }
      done += Math.max(count, 0);
    }
  }

  @Override
  public void close() {
    closed = true;
    port.closePort();
  }

  private InstrumentFault lost(String doing) {
    return closed
        ? new InstrumentFault(role, doing, "the port is closed", "Open the bench again.")
        : new InstrumentFault(
            role,
            doing,
            "the line is lost",
            "Check that the adapter is plugged in and the instrument on, then open the bench"
                + " again.");
  }

  private static int stopBits(Characters characters) {
    return characters == Characters.NONE_2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
  }

  private static int parity(Characters characters) {
    return switch (characters) {
      case NONE_1, NONE_2 -> SerialPort.NO_PARITY;
      case EVEN_1 -> SerialPort.EVEN_PARITY;
      case ODD_1 -> SerialPort.ODD_PARITY;
    };
  }

  private static InstrumentFault noSuchPort(String role, String opening) {
    return new InstrumentFault(
        role,
        opening,
        "there is no such port",
        "List the ports ('corewright ports') and name one of them in the bench description. An"
            + " emulated bench has them from 'corewright practice', in the file that it writes.");
  }

  private static InstrumentFault refused(String role, String opening, int code) {
    return switch (code) {
      case SAME_PROCESS ->
          new InstrumentFault(
              role,
              opening,
              "this program has it open already",
              "Give each instrument of the bench description a port of its own.");
      case OTHER_PROCESS ->
          new InstrumentFault(
              role, opening, "another program has it open", "Close that program and try again.");
      case NO_PERMISSION ->
          new InstrumentFault(
              role,
              opening,
              "this user may not use it",
              "Add the user to the group that owns the port (often dialout) and log in again.");
      default ->
          new InstrumentFault(
              role,
              opening,
              "the system refused it with code " + code,
              "Unplug the adapter, plug it in again and try once more.");
    };
  }
}
