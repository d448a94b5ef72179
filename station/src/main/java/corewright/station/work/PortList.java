package corewright.station.work;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.port.serial.PortInfo;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.run.Clock;
import corewright.bench.wire.WhoIsThere;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What can be plugged into, and who answers there. */
public final class PortList {
  private final Links links;
  private final Supplier<List<PortInfo>> ports;
  private final Clock clock;

  /** The serial ports of this computer. */
  public PortList(Clock clock) {
    SerialLinks serial = new SerialLinks(clock);
    this.links = serial;
    this.ports = serial::list;
    this.clock = clock;
  }

  /** Ports that are known already. */
  PortList(Links links, List<PortInfo> ports, Clock clock) {
    this.links = links;
    this.ports = () -> ports;
    this.clock = clock;
  }

  /**
   * One port.
   *
   * @param answer what it said to {@code *IDN?}, or why it said nothing; empty if it was not asked
   */
  public record Entry(PortInfo port, Optional<String> answer) {}

  /** Every port; with {@code ask}, each is opened and asked {@code *IDN?}. */
  public List<Entry> list(boolean ask, int baud) {
    return ports.get().stream()
        .map(p -> new Entry(p, ask ? Optional.of(answer(p, baud)) : Optional.empty()))
        .toList();
  }

  private String answer(PortInfo port, int baud) {
    try (Link link = links.open("port", port.path(), baud)) {
      return WhoIsThere.ask(link, clock);
    } catch (InstrumentFault silent) {
      return silent.found();
    }
  }
}
