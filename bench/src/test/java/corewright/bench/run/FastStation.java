package corewright.bench.run;

import corewright.bench.capture.CaptureHeader;
import corewright.bench.capture.RawScan;
import corewright.bench.capture.RawWriter;
import corewright.bench.port.Link;
import corewright.bench.wire.FramedDigitizer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a run does with its samples, without the rest of it: frames are decoded, held against every
 * trip, kept on the disk, and measured. The instruments but the digitizer have no wires.
 */
final class FastStation implements AutoCloseable {
  private static final double MOST_S = 600;

  /** What a load of 0 A and of 2 A is told apart by, and how a hold is measured. */
  private static final RawScan.Settings SETTINGS = new RawScan.Settings(0.2, 100, 1e-3, 0.48);

  private final FramedDigitizer digitizer;
  private final BenchInstruments bench;
  private final RunContext context;
  private final Path file;
  private final RawWriter raw;

  FastStation(Link link, int rate_Hz, Path folder) {
    Clock clock = Clock.system();
    digitizer = FramedDigitizer.open("digitizer", link, clock);
    BenchInstruments fake = new FakeBench().instruments();
    bench =
        new BenchInstruments(
            fake.load(),
            fake.source(),
            digitizer,
            digitizer,
            fake.discharge(),
            fake.interlock(),
            Optional.empty(),
            Optional.empty());
    Framing framing = Framing.of(rate_Hz, digitizer.channels().size());
    RunPlan plan = Plans.plan(folder, Plans.profile("sd48", rate_Hz, List.of(Plans.FULL)));
    context = new RunContext(plan, bench, framing, RunListener.NONE, new Stop(), clock);
    file = folder.resolve("fast.raw");
    List<String> feeds = List.of("input");
    raw =
        RawWriter.create(
            file, new CaptureHeader(rate_Hz, digitizer.channels(), feeds, new TreeMap<>()));
  }

  int samplesOfFrame() {
    return context.framing().samples();
  }

  /** Begins to sample; the load counts as on, so that every trip is looked at. */
  Sampler start() {
    Sampler sampler = new Sampler(context, raw, () -> 2, List.of());
    digitizer.start(context.framing().rate_Hz(), context.framing().samples());
    sampler.step("full", "HOLD", MOST_S);
    sampler.relayClosed();
    return sampler;
  }

  /** Takes frames until one trips, then commands the safe state; how the run ended. */
  String untilItTrips() {
    Sampler sampler = start();
    try {
      while (true) {
        sampler.next();
      }
    } catch (EndOfRun ended) {
      SafeState.take(bench);
      return ended.end().trip().name();
    }
  }

  void stop() {
    digitizer.stop();
  }

  RawScan.Result measured() throws IOException {
    return RawScan.of(file, SETTINGS);
  }

  @Override
  public void close() {
    raw.close();
    digitizer.close();
  }
}
