package corewright.station.web.live;

import corewright.bench.hand.Hands;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.station.work.Dialects;
import corewright.station.work.Home;
import corewright.station.work.KeptWire;
import corewright.station.work.PortList;
import java.nio.file.Path;
import java.util.Optional;

/** A bench of the shop, on serial ports or sockets. */
record RealBench(BenchDescription description, Clock clock) implements Bench {

  /** Its file may be one of an emulated bench all the same. */
  @Override
  public boolean emulated() {
    return description.namesAnEmulatedPort();
  }

  @Override
  public Opened open(Unit unit, Hands hands, KeptWire wire) {
    BenchOpener opener =
        new BenchOpener(
            wire.over(new SocketLinks(clock, new SerialLinks(clock))),
            new Dialects(Home.fromSystem(), Path.of(description.origin().path())),
            wire.clock(),
            Optional.of(hands));
    return new Ports(description, opener.open(new PortList(clock).bind(description)));
  }

  private record Ports(BenchDescription description, BenchInstruments instruments)
      implements Opened {
    @Override
    public void close() {
      instruments.close();
    }
  }
}
