package corewright.bench.wire;

import com.ghgande.j2mod.modbus.ModbusException;
import com.ghgande.j2mod.modbus.ModbusSlaveException;
import com.ghgande.j2mod.modbus.io.ModbusRTUTransport;
import com.ghgande.j2mod.modbus.io.ModbusTransaction;
import com.ghgande.j2mod.modbus.msg.ModbusRequest;
import com.ghgande.j2mod.modbus.msg.ModbusResponse;
import com.ghgande.j2mod.modbus.msg.ReadInputRegistersRequest;
import com.ghgande.j2mod.modbus.msg.ReadInputRegistersResponse;
import com.ghgande.j2mod.modbus.msg.ReadMEIRequest;
import com.ghgande.j2mod.modbus.msg.ReadMEIResponse;
import com.ghgande.j2mod.modbus.msg.ReadMultipleRegistersRequest;
import com.ghgande.j2mod.modbus.msg.ReadMultipleRegistersResponse;
import com.ghgande.j2mod.modbus.msg.WriteSingleRegisterRequest;
import com.ghgande.j2mod.modbus.msg.WriteSingleRegisterResponse;
import com.ghgande.j2mod.modbus.procimg.InputRegister;
import com.ghgande.j2mod.modbus.procimg.SimpleRegister;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.describe.Span;
import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One Modbus server on a line, over RTU. The library makes and reads the frames; what it takes for
 * an answer is held against the question, since a frame carries no number by which a late one could
 * be told. Not thread-safe.
 */
final class RtuLine {
  private static final int INPUT = 4;
  private static final int BASIC = 1;
  private static final int SHOWN_BYTES = 16;

  /** MODBUS Application Protocol Specification V1.1b3, 7. */
  private static final Map<Integer, String> EXCEPTIONS =
      Map.of(
          1, "illegal function",
          2, "illegal data address",
          3, "illegal data value",
          4, "server device failure",
          5, "acknowledge",
          6, "server device busy",
          8, "memory parity error",
          10, "gateway path unavailable",
          11, "gateway target device failed to respond");

  private final String role;
  private final Link link;
  private final Characters characters;
  private final int unit;
  private final Duration patience;
  private final RtuConnection line;
  private ModbusTransaction transaction;
  private boolean outOfStep;

  /**
   * @param connection whose line it is, and how that is set
   * @param unit address of the server
   * @param patience an answer that takes longer is no answer
   */
  RtuLine(Link link, Connection connection, int unit, Duration patience, Clock clock) {
    this.role = connection.role();
    this.link = link;
    this.characters = connection.characters();
    this.unit = unit;
    this.patience = patience;
    this.line = new RtuConnection(link, connection.baud(), characters, patience, clock);
    this.transaction = begun(line);
  }

  /** Without retries: a sample that is asked for again would be of another moment. */
  private static ModbusTransaction begun(RtuConnection connection) {
    try {
      ModbusRTUTransport transport = new ModbusRTUTransport();
      transport.setCommPort(connection);
      ModbusTransaction transaction = transport.createTransaction();
      transaction.setRetries(0);
      transaction.setCheckingValidity(false); // it knows numbers of TCP frames, which RTU has not
      return transaction;
    } catch (IOException impossible) {
      throw new IllegalStateException("setting the line of a transport", impossible);
    }
  }

  /** The registers of a span, 0 to 65535 each. */
  int[] read(Span span) {
    boolean input = span.function() == INPUT;
    String doing =
        "reading %d %s registers from %d"
            .formatted(span.count(), input ? "input" : "holding", span.address());
    InputRegister[] registers =
        input
            ? ask(
                    doing,
                    new ReadInputRegistersRequest(span.address(), span.count()),
                    ReadInputRegistersResponse.class)
                .getRegisters()
            : ask(
                    doing,
                    new ReadMultipleRegistersRequest(span.address(), span.count()),
                    ReadMultipleRegistersResponse.class)
                .getRegisters();
    if (registers.length != span.count()) {
      throw broken(doing, registers.length + " registers came");
    }
    return Stream.of(registers).mapToInt(InputRegister::toUnsignedShort).toArray();
  }

  /** Sets a holding register; its echo confirms it. */
  void write(int address, int value) {
    String doing = "writing %d to register %d".formatted(value, address);
    WriteSingleRegisterResponse echo =
        ask(
            doing,
            new WriteSingleRegisterRequest(address, new SimpleRegister(value)),
            WriteSingleRegisterResponse.class);
    if (echo.getReference() != address || echo.getRegisterValue() != value) {
      throw broken(
          doing, "%d at %d came back".formatted(echo.getRegisterValue(), echo.getReference()));
    }
  }

  /**
   * Maker, model, 0 in place of a serial number, revision.
   *
   * @see "MODBUS Application Protocol Specification V1.1b3, 6.21 Read Device Identification"
   */
  String identity() {
    String doing = "reading its identification";
    ReadMEIResponse said = ask(doing, new ReadMEIRequest(BASIC, 0), ReadMEIResponse.class);
    String[] objects = {"", "", ""};
    for (int i = 0; i < said.getFieldCount(); i++) {
      int id = said.getFieldId(i);
      if (id < objects.length) {
        objects[id] = Texts.printable(said.getField(i)).replace(',', ' ').strip();
      }
    }
    return objects[0] + "," + objects[1] + ",0," + objects[2];
  }

  private <T extends ModbusResponse> T ask(String doing, ModbusRequest request, Class<T> wanted) {
    if (outOfStep) { // a late answer must not be taken for the next one
      line.settle();
      transaction = begun(line);
    }
    outOfStep = true;
    request.setUnitID(unit);
    transaction.setRequest(request);
    try {
      transaction.execute();
    } catch (InstrumentFault lost) {
      throw lost;
    } catch (ModbusSlaveException refused) {
      throw refused(doing, refused.getType());
    } catch (ModbusException | RuntimeException unreadable) { // it trips over strange lengths
      throw notWhole(doing);
    }
    ModbusResponse response = transaction.getResponse();
    if (!wanted.isInstance(response) || response.getUnitID() != unit) {
      throw broken(
          doing,
          "address %d answers to function %d"
              .formatted(response.getUnitID(), response.getFunctionCode()));
    }
    outOfStep = false;
    return wanted.cast(response);
  }

  private InstrumentFault refused(String doing, int code) {
    int other = transaction.getResponse().getUnitID();
    if (other != unit) {
      return broken(doing, "address " + other + " answers");
    }
    outOfStep = false;
    return fault(
        doing,
        "it refuses with exception %d, %s"
            .formatted(code, EXCEPTIONS.getOrDefault(code, "which no standard names")),
        code <= 3
            ? "Correct function, address and rate in the dialect by the instrument's manual."
            : "Switch the instrument off and on.");
  }

  private InstrumentFault notWhole(String doing) {
    byte[] came = line.came();
    long patience_ms = patience.toMillis();
    if (came.length == 0) {
      return fault(
          doing,
          "no answer within " + patience_ms + " ms",
          "Check the cable and its two wires, that the instrument is on, and its address, line rate"
              + " and parity (the bench's file says "
              + characters.word()
              + ").");
    }
    String bytes = HexFormat.ofDelimiter(" ").formatHex(Arrays.copyOf(came, shown(came)));
    return line.isLate()
        ? broken(doing, "only %s came within %d ms".formatted(bytes, patience_ms))
        : broken(doing, "the check sum (CRC) of %s is wrong".formatted(bytes));
  }

  private static int shown(byte[] came) {
    return Math.min(came.length, SHOWN_BYTES);
  }

  private BrokenAnswer broken(String doing, String found) {
    outOfStep = true;
    return new BrokenAnswer(role, doing + " on " + link.name(), found);
  }

  InstrumentFault fault(String doing, String found, String remedy) {
    return new InstrumentFault(role, doing + " on " + link.name(), found, remedy);
  }

  void close() {
    line.close();
  }
}
