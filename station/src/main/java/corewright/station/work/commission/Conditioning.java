package corewright.station.work.commission;

import corewright.bench.commission.Commission;
import corewright.bench.commission.ContactCheck;
import corewright.bench.commission.NoiseFloor;
import corewright.bench.commission.Plug;
import corewright.bench.hand.Hands;
import corewright.bench.port.Identities;
import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.Framing;
import corewright.bench.run.Stop;
import corewright.bench.wire.BenchOpener;
import corewright.bench.wire.PortFinder;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.station.work.Dialects;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Measures the noise of a bench that is described, and the contacts of its fixture by a link. */
public final class Conditioning {
  /** Long enough that the rms is known within a per cent at 10 kHz. */
  private static final double NOISE_S = 1;

  private final Home home;
  private final Links links;
  private final Supplier<List<PortInfo>> ports;
  private final Clock clock;

  /**
   * @param ports every port that this computer has now
   */
  public Conditioning(Home home, Links links, Supplier<List<PortInfo>> ports, Clock clock) {
    this.home = home;
    this.links = links;
    this.ports = ports;
    this.clock = clock;
  }

  /**
   * What was found.
   *
   * @param contacts empty where no link was put in
   */
  public record Found(List<NoiseFloor> noise, Optional<Measurement> contacts, boolean emulated) {
    public Found {
      noise = List.copyOf(noise);
    }
  }

  /**
   * Measures; everything is off before and after.
   *
   * @param file the bench's file
   * @param link in the place of a unit; empty: nothing is energised
   * @throws corewright.bench.port.InstrumentFault if an instrument fails
   */
  public Found look(
      BenchDescription bench, Path file, Optional<Plug> link, Optional<Hands> hands, Stop stop) {
    BenchOpener opener = new BenchOpener(links, new Dialects(home, file), clock, hands);
    BenchDescription today = new PortFinder(links, ports, clock).bind(bench);
    try (BenchInstruments open = opener.open(today)) {
      Plug plug = link.orElseGet(() -> Plug.of(new Measurement(10, 0, Unit.OHM)));
      Commission commission = new Commission(open, plug, clock, stop);
      Framing framing = Commissioning.framing(open.digitizer(), bench);
      List<NoiseFloor> noise =
          commission.noise(framing, NOISE_S).entrySet().stream()
              .map(e -> NoiseFloor.of(e.getKey(), e.getValue()))
              .sorted((a, b) -> a.channel().compareTo(b.channel()))
              .toList();
      Optional<Measurement> contacts = link.map(p -> contacts(commission, framing, bench));
      boolean emulated = open.all().stream().anyMatch(i -> Identities.isEmulated(i.identity()));
      return new Found(noise, contacts, emulated);
    }
  }

  private static Measurement contacts(
      Commission commission, Framing framing, BenchDescription bench) {
    try {
      return ContactCheck.of(commission.wiring(framing), bench.channels());
    } catch (IllegalArgumentException nothing) {
      throw new Refused(
          "The contacts cannot be told: " + nothing.getMessage(),
          "Look whether the link is in, from supply + to output +, with no unit in its place, and"
              + " the load connected.");
    }
  }
}
