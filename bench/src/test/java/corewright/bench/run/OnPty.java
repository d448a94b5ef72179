package corewright.bench.run;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.port.Links;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.line.PtyLine;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The emulated bench behind pseudo-terminals, opened as any adapter would be. */
final class OnPty implements AutoCloseable {
  private static final Clock CLOCK = Clock.system();

  final EmulatedBench emulated;
  final BenchDescription description;

  OnPty(EmulatedBench.Setup setup) throws IOException {
    this(setup, "emulated-" + setup.unit().family(), Optional.empty());
  }

  /** A bench that is described in a file of its own. */
  static OnPty described(EmulatedBench.Setup setup, String bench) throws IOException {
    return new OnPty(setup, bench, Optional.empty());
  }

  private OnPty(EmulatedBench.Setup setup, String bench, Optional<String> missing)
      throws IOException {
    assumeTrue(
        setup.lines() == LineKind.LOOPBACK || PtyLine.isPossible(),
        "pseudo-terminals are made on Linux only");
    emulated = EmulatedBench.open(setup);
    BenchDescription d = Descriptions.shippedBench(bench).withPorts(emulated.ports());
    description =
        new BenchDescription(
            d.id(),
            d.revision(),
            d.title(),
            d.instruments().stream().filter(c -> !missing.equals(Optional.of(c.role()))).toList(),
            d.channels(),
            d.fixture(),
            d.trip_s(),
            d.origin());
  }

  /** The same bench without one of the instruments that a bench may lack. */
  OnPty(EmulatedBench.Setup setup, String missing) throws IOException {
    this(setup, "emulated-" + setup.unit().family(), Optional.of(missing));
  }

  /** The links that a station would open, for whoever stands between. */
  static Links links() {
    return new SocketLinks(CLOCK, new SerialLinks(CLOCK));
  }

  BenchInstruments open() {
    return open(links(), CLOCK);
  }

  /** Opens it with another dialect for one role. */
  BenchInstruments openWith(String role, String dialect) {
    String described = description.instrument(role).orElseThrow().dialect();
    return new BenchOpener(links(), id -> impatient(id.equals(described) ? dialect : id), CLOCK)
        .open(description);
  }

  /** Opens it with some lines set in another way. */
  BenchInstruments openSet(Links links, Map<String, Characters> set) {
    BenchDescription d = description;
    List<Connection> lines = d.instruments().stream().map(c -> setAs(c, set)).toList();
    return new BenchOpener(links, OnPty::impatient, CLOCK)
        .open(
            new BenchDescription(
                d.id(),
                d.revision(),
                d.title(),
                lines,
                d.channels(),
                d.fixture(),
                d.trip_s(),
                d.origin()));
  }

  private static Connection setAs(Connection c, Map<String, Characters> set) {
    return new Connection(
        c.role(),
        c.port(),
        c.baud(),
        set.getOrDefault(c.role(), c.characters()),
        c.bytesPerSecond(),
        c.dialect(),
        c.calibration());
  }

  BenchInstruments open(Links links, Clock clock) {
    return new BenchOpener(links, OnPty::impatient, clock).open(description);
  }

  /** Emulated instruments answer at once: a test need not wait a second for those that do not. */
  private static Dialect impatient(String id) {
    Dialect d = Descriptions.shippedDialect(id);
    return new Dialect(
        d.id(),
        d.revision(),
        d.role(),
        d.title(),
        d.identity(),
        new Dialect.Line(d.line().send(), d.line().receive(), 0.3),
        d.confirmation(),
        d.errors(),
        d.arguments(),
        d.actions(),
        d.queries(),
        d.settle_s(),
        d.rampRate(),
        d.samples(),
        d.origin());
  }

  RunPlan plan(Path folder, Profile profile) {
    return new RunPlan(
        "run-1",
        "CW-1",
        Catalogue.ofHome().family(profile.family()),
        profile,
        description,
        "Ada",
        folder,
        new Confirmations(true, Optional.of("Grace"), Optional.empty(), java.util.List.of()));
  }

  RunResult run(BenchInstruments bench, Path folder, Profile profile) {
    return run(bench, folder, profile, RunListener.NONE);
  }

  RunResult run(BenchInstruments bench, Path folder, Profile profile, RunListener listener) {
    return run(bench, folder, profile, listener, CLOCK);
  }

  RunResult run(
      BenchInstruments bench, Path folder, Profile profile, RunListener listener, Clock clock) {
    return new RunEngine(clock).run(plan(folder, profile), bench, listener, new Stop());
  }

  @Override
  public void close() {
    emulated.close();
  }
}
