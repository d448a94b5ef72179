package corewright.station.work.commission;

import corewright.bench.commission.Commission;
import corewright.bench.commission.Plug;
import corewright.bench.commission.Spread;
import corewright.bench.commission.TripTime;
import corewright.bench.commission.WiringCheck;
import corewright.bench.commission.WiringFinding;
import corewright.bench.commission.WiringSeen;
import corewright.bench.hand.Hands;
import corewright.bench.port.Digitizer;
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
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.fixtures.describe.BenchDescription.FixtureDescription;
import corewright.fixtures.describe.BenchText;
import corewright.station.work.Checking;
import corewright.station.work.Dialects;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Measures a new bench with a resistor in the place of a unit, and writes its file. */
public final class Commissioning {
  /** A channel that nothing was said of, relative: common practice, no source. */
  private static final double UNKNOWN = 0.05;

  private static final int[] RATES_HZ = {10_000, 5000, 2000, 1000, 500, 200, 100, 50, 20, 10, 5, 1};

  private final Home home;
  private final Links links;
  private final Supplier<List<PortInfo>> ports;
  private final Clock clock;

  /**
   * @param ports every port that this computer has now
   */
  public Commissioning(Home home, Links links, Supplier<List<PortInfo>> ports, Clock clock) {
    this.home = home;
    this.links = links;
    this.ports = ports;
    this.clock = clock;
  }

  /**
   * Opens the bench and looks at it; nothing is written.
   *
   * @param draft what was found and said; what is measured stands in it as unknown
   * @param out where its file will lie, and dialects of one's own
   * @param hands whoever sets a load by hand
   * @throws corewright.bench.port.InstrumentFault if an instrument fails; all is off then
   */
  public Commissioned look(
      BenchDescription draft, Path out, Plug plug, int trials, Optional<Hands> hands, Stop stop) {
    BenchOpener opener = new BenchOpener(links, new Dialects(home, out), clock, hands);
    BenchDescription today = new PortFinder(links, ports, clock).bind(draft);
    try (BenchInstruments bench = opener.open(today)) {
      boolean emulated = bench.all().stream().anyMatch(i -> Identities.isEmulated(i.identity()));
      Commission commission = new Commission(bench, plug, clock, stop);
      Framing framing = framing(bench.digitizer(), draft);
      WiringSeen seen = commission.wiring(framing);
      List<WiringFinding> wiring = WiringCheck.of(seen);
      boolean stands = wiring.stream().allMatch(f -> f.kind().stands());
      List<TripTime> trips = stands ? commission.trips(framing, trials) : List.of();
      return new Commissioned(
          described(draft, bench, wiring, seen.rest(), trips, emulated),
          wiring,
          seen.rest(),
          trips,
          emulated);
    }
  }

  /** As fast as digitizer and line carry, and no faster than a run would sample. */
  static Framing framing(Digitizer digitizer, BenchDescription draft) {
    double line = draft.instrument("digitizer").orElseThrow().bytesPerSecond();
    int channels = digitizer.channels().size();
    return IntStream.of(RATES_HZ)
        .filter(rate -> rate <= digitizer.most_Hz())
        .mapToObj(rate -> Framing.of(rate, channels))
        .filter(f -> digitizer.bytesPerSecond(f.rate_Hz(), f.samples()) <= line)
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "The digitizer's line carries not even one sample a second",
                    "Say what it carries with --line-bytes."));
  }

  private static BenchDescription described(
      BenchDescription draft,
      BenchInstruments bench,
      List<WiringFinding> wiring,
      Map<String, Spread> rest,
      List<TripTime> trips,
      boolean emulated) {
    FixtureDescription said = draft.fixture();
    return new BenchDescription(
        draft.id(),
        draft.revision(),
        emulated ? "EMULATED, commissioned to practise: " + draft.title() : draft.title(),
        draft.instruments(),
        bench.digitizer().channels().stream()
            .map(c -> channel(c.name(), wiring, rest, emulated))
            .toList(),
        new FixtureDescription(
            bench.relay().fixture().orElse(said.id()),
            said.families(),
            said.discharge_ohm(),
            said.ceiling_V()),
        trips.isEmpty() ? draft.trip_s() : Math.ceil(TripTime.worst(trips).most_s() * 1000) / 1000,
        draft.origin());
  }

  /** What was not taken away counts as uncertainty (JCGM 100, F.2.4.5). */
  private static ChannelCalibration channel(
      String name, List<WiringFinding> wiring, Map<String, Spread> rest, boolean emulated) {
    double gain =
        wiring.stream()
            .filter(f -> f.what().equals(name))
            .flatMap(f -> f.ratio().stream())
            .findFirst()
            .map(r -> Math.hypot(r.value() - 1, r.u()))
            .orElse(UNKNOWN);
    double zero =
        Optional.ofNullable(rest.get(name)).map(s -> Math.hypot(s.mean(), s.u())).orElse(0.0);
    Optional<Double> noise =
        Optional.ofNullable(rest.get(name)).map(s -> rounded(s.sd())).filter(n -> n > 0);
    return new ChannelCalibration(
        name,
        rounded(gain),
        rounded(zero),
        emulated ? "not calibrated (emulated)" : "not calibrated",
        noise);
  }

  /** Up, to two figures: nobody reads more of an uncertainty. */
  private static double rounded(double u) {
    if (!(u > 0)) {
      return 0;
    }
    double step = Math.pow(10, Math.floor(Math.log10(u)) - 1);
    return Double.parseDouble(String.format(Locale.ROOT, "%.1e", Math.ceil(u / step) * step));
  }

  /**
   * Writes the bench's file, once it is found good.
   *
   * @param replace whether a file that is there already may go; it is kept beside
   * @return what a file that was there is called now
   * @throws corewright.files.BadFile if the description has mistakes; nothing is written then
   */
  public Optional<Path> write(BenchDescription bench, Path out, boolean replace) {
    boolean there = Files.exists(out);
    if (there && !replace) {
      throw new Refused(
          out + " is there already", "Name another file with --out, or give --replace.");
    }
    Path next = out.toAbsolutePath().resolveSibling(out.getFileName() + ".new");
    try {
      Files.writeString(next, BenchText.of(bench));
      try {
        new Checking(home).check(next);
      } catch (RuntimeException bad) {
        Files.delete(next);
        throw bad;
      }
      Path old = out.resolveSibling(out.getFileName() + ".before");
      if (there) {
        Files.move(out, old, StandardCopyOption.REPLACE_EXISTING);
      }
      Files.move(next, out);
      return there ? Optional.of(old) : Optional.empty();
    } catch (IOException refused) {
      throw new UncheckedIOException("the bench's file cannot be written: " + out, refused);
    }
  }
}
