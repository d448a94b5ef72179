package corewright.station.demo;

import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.station.work.Refused;
import java.io.IOException;

/**
 * An emulated bench with one unit on it, and the station's own instruments on the other end of its
 * serial lines.
 */
final class DemoBench implements AutoCloseable {
  private final EmulatedBench emulated;
  private final BenchDescription description;
  private final BenchInstruments instruments;

  private DemoBench(
      EmulatedBench emulated, BenchDescription description, BenchInstruments instruments) {
    this.emulated = emulated;
    this.description = description;
    this.instruments = instruments;
  }

  static DemoBench open(DemoCore.OnTheBench unit, long seed, Clock clock) {
    EmulatedBench emulated;
    try {
      emulated = EmulatedBench.open(EmulatedBench.Setup.of(unit.unit(), seed).on(unit.supply()));
    } catch (IOException missing) {
      throw new Refused(
          "The emulated bench cannot be opened: " + missing.getMessage(),
          "Where this system's pseudo-terminals cannot be used:"
              + " JAVA_TOOL_OPTIONS=-Dcorewright.lines=loopback");
    }
    BenchDescription description =
        Descriptions.shippedBench("emulated-" + unit.unit().family()).withPorts(emulated.ports());
    try {
      BenchOpener opener =
          new BenchOpener(
              new SocketLinks(clock, new SerialLinks(clock)), Descriptions::shippedDialect, clock);
      return new DemoBench(emulated, description, opener.open(description));
    } catch (RuntimeException failed) {
      emulated.close();
      throw failed;
    }
  }

  BenchDescription description() {
    return description;
  }

  BenchInstruments instruments() {
    return instruments;
  }

  @Override
  public void close() {
    instruments.close();
    emulated.close();
  }
}
