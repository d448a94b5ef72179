package corewright.station.work;

import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.Clock;
import corewright.bench.wire.PortChoice;
import corewright.bench.wire.PortFinder;
import corewright.bench.wire.PortFinder.Heard;
import corewright.fixtures.describe.BenchDescription;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What can be plugged into, who answers there, and where a bench's instruments are today. */
public final class PortList {
  private final Links links;
  private final Supplier<List<PortInfo>> ports;
  private final Clock clock;

  /** The serial ports of this computer. */
  public PortList(Clock clock) {
    SerialLinks serial = new SerialLinks(clock);
    this.links = new SocketLinks(clock, serial);
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
   * @param answer what it said of itself, or why it said nothing; empty if it was not asked
   * @param name what to write as {@code port} into a bench description, so that it stays right when
   *     the port gets another number
   */
  public record Entry(PortInfo port, Optional<String> answer, String name) {}

  /** Every port; with {@code ask}, each is opened and asked who is there. */
  public List<Entry> list(boolean ask, int baud) {
    List<PortInfo> all = ports.get();
    List<Heard> heard =
        ask
            ? finder().survey(baud)
            : all.stream().map(p -> new Heard(p, Optional.empty(), false, "")).toList();
    return heard.stream()
        .map(
            h ->
                new Entry(
                    h.port(),
                    ask ? Optional.of(h.identity().orElse(h.why())) : Optional.empty(),
                    PortChoice.lasting(h, all)))
        .toList();
  }

  /**
   * The bench with each port as it is called today.
   *
   * @throws corewright.bench.port.InstrumentFault if an instrument is not found, or two fit
   */
  public BenchDescription bind(BenchDescription bench) {
    return finder().bind(bench);
  }

  private PortFinder finder() {
    return new PortFinder(links, ports, clock);
  }
}
