package corewright.bench.wire;

import corewright.bench.hand.HandLoad;
import corewright.bench.hand.Hands;
import corewright.bench.port.Digitizer;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.port.Load;
import corewright.bench.port.Relay;
import corewright.bench.port.Switch;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Samples;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * From a bench description to instruments that have said who they are. Energises nothing: what an
 * instrument is sent before it is known is {@code *IDN?}.
 */
public final class BenchOpener {
  private final Links links;
  private final Function<String, Dialect> dialects;
  private final Clock clock;
  private final Optional<Hands> hands;

  /**
   * @param links what opens the ports
   * @param dialects by id, as {@code Descriptions::shippedDialect}; throws for an unknown one
   * @param clock what deadlines are held against
   */
  public BenchOpener(Links links, Function<String, Dialect> dialects, Clock clock) {
    this(links, dialects, clock, Optional.empty());
  }

  /**
   * @param hands whoever sets a load that the description says is set by hand
   */
  public BenchOpener(
      Links links, Function<String, Dialect> dialects, Clock clock, Optional<Hands> hands) {
    this.hands = hands;
    this.links = links;
    this.dialects = dialects;
    this.clock = clock;
  }

  /**
   * Opens every instrument and matches its identification answer against its dialect; only then is
   * any of them prepared.
   *
   * @throws InstrumentFault if a port cannot be had, or someone else answers; all ports are given
   *     back then
   */
  public BenchInstruments open(BenchDescription bench) {
    Deque<Link> opened = new ArrayDeque<>();
    try {
      boolean byHand = connection(bench, "load").isByHand();
      Optional<ScpiSession> load =
          byHand ? Optional.empty() : sessionIfThere(bench, "load", opened);
      ScpiSession source = session(bench, "source", opened);
      ScpiSession discharge = session(bench, "switch", opened);
      ScpiSession interlock = session(bench, "interlock", opened);
      Optional<ScpiSession> relay = sessionIfThere(bench, "relay", opened);
      Sampling sampling = sampling(bench, new ScpiSwitch("switch", discharge), relay, opened);
      Optional<ScpiSession> thermometer = sessionIfThere(bench, "thermometer", opened);
      Optional<ScpiSession> meter = sessionIfThere(bench, "meter", opened);
      Stream.concat(
              Stream.of(source, discharge, interlock),
              Stream.of(load, relay, thermometer, meter).flatMap(Optional::stream))
          .forEach(s -> s.act("prepare", Map.of()));
      return new BenchInstruments(
          load.<Load>map(s -> new ScpiLoad("load", s)).orElseGet(() -> byHand(bench)),
          new ScpiSource("source", source),
          sampling.digitizer(),
          sampling.relay(),
          sampling.discharge(),
          new ScpiInterlock("interlock", interlock),
          thermometer.map(s -> new ScpiThermometer("thermometer", s)),
          meter.map(s -> new ScpiMeter("meter", s)));
    } catch (RuntimeException failed) {
      opened.forEach(Link::close);
      throw failed;
    }
  }

  private record Sampling(Digitizer digitizer, Relay relay, Switch discharge) {}

  /** The fixture's board, or a digitizer that only samples with the box that holds the relay. */
  private Sampling sampling(
      BenchDescription bench,
      ScpiSwitch discharge,
      Optional<ScpiSession> relay,
      Deque<Link> opened) {
    if (relay.isEmpty()) {
      Link link = open(connection(bench, "digitizer"), opened);
      FramedDigitizer board = FramedDigitizer.open("digitizer", link, clock);
      return new Sampling(board, board, discharge);
    }
    ScpiRelay box = new ScpiRelay("relay", relay.get(), discharge);
    Connection connection = connection(bench, "digitizer");
    Dialect dialect = dialect(bench, connection);
    Samples samples =
        dialect
            .samples()
            .orElseThrow(() -> new IllegalStateException("a digitizer's dialect has samples"));
    Scans scans = scans(connection, dialect, samples, opened);
    return new Sampling(new PlainDigitizer("digitizer", samples, scans, box), box, discharge);
  }

  private Scans scans(Connection connection, Dialect dialect, Samples samples, Deque<Link> opened) {
    if (samples.form() instanceof Samples.Registers registers) {
      Link link = open(connection, opened);
      return RegisterScans.open(link, connection, dialect, samples, registers, clock);
    }
    ScpiSession session = session(connection, dialect, opened);
    session.act("prepare", Map.of());
    return samples.form() instanceof Samples.Block block
        ? new BlockScans(session, samples, block)
        : new LineScans(session, samples, (Samples.Lines) samples.form(), clock);
  }

  private Optional<ScpiSession> sessionIfThere(
      BenchDescription bench, String role, Deque<Link> opened) {
    return bench.instrument(role).map(there -> session(bench, role, opened));
  }

  private Load byHand(BenchDescription bench) {
    return new HandLoad(
        hands.orElseThrow(
            () ->
                new InstrumentFault(
                    "load",
                    "opening bench " + bench.id(),
                    "its load is set by hand, and nobody is there to be asked",
                    "Run it where a person can be asked.")));
  }

  private ScpiSession session(BenchDescription bench, String role, Deque<Link> opened) {
    Connection connection = connection(bench, role);
    return session(connection, dialect(bench, connection), opened);
  }

  private Dialect dialect(BenchDescription bench, Connection connection) {
    Dialect dialect = dialects.apply(connection.dialect());
    if (!dialect.role().equals(connection.role())) {
      throw new InstrumentFault(
          connection.role(),
          "opening bench " + bench.id(),
          "dialect " + dialect.id() + " is one for a " + dialect.role(),
          "Name a dialect for this role in the bench description.");
    }
    return dialect;
  }

  private ScpiSession session(Connection connection, Dialect dialect, Deque<Link> opened) {
    ScpiSession session =
        new ScpiSession(connection.role(), open(connection, opened), dialect, clock);
    session.identity();
    return session;
  }

  private Link open(Connection connection, Deque<Link> opened) {
    Link link =
        links.open(
            connection.role(), connection.port(), connection.baud(), connection.characters());
    opened.push(link);
    return link;
  }

  private static Connection connection(BenchDescription bench, String role) {
    return bench
        .instrument(role)
        .orElseThrow(
            () ->
                new InstrumentFault(
                    role,
                    "opening bench " + bench.id(),
                    "the description names no " + role,
                    "Add it to the bench description: no run goes without it."));
  }
}
