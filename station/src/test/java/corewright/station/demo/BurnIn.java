package corewright.station.demo;

import corewright.bench.capture.CaptureFile;
import corewright.bench.port.Digitizer;
import corewright.bench.record.RunEnd;
import corewright.bench.run.RunListener;
import corewright.bench.run.Stop;
import corewright.profiles.Catalogue;
import corewright.reports.document.Shop;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One station, and the cores of the demonstration one after the other through its benches, engine,
 * recording, judge, ledger and documents: what it holds afterwards that it did not hold before. A
 * unit is on the bench every ten minutes of a day that passes with the samples.
 */
final class BurnIn implements DemoProgress {
  static final double MOST_GROWTH_MB = 16;

  private static final Duration FROM_UNIT_TO_UNIT = Duration.ofMinutes(10);

  /** By then each thing that is kept for good has been used once. */
  private static final int WARM = 4;

  private final DayClock clock;
  private final Path captures;
  private final DemoProgress also;
  private final Stop closing = new Stop();
  private Duration day = Duration.ofDays(1);
  private Duration lastUnit = Duration.ZERO;
  private Optional<Held> before = Optional.empty();
  private int runs;
  private double sampled_s;

  BurnIn(DayClock clock, Path captures, DemoProgress also) {
    this.clock = clock;
    this.captures = captures;
    this.also = also;
  }

  @Override
  public void core(int index, int count, String tag, String family) {
    if (runs >= WARM && before.isEmpty()) {
      before = Optional.of(Held.now(captures));
    }
    nextUnit();
    also.core(index, count, tag, family);
  }

  @Override
  public void rebuilt(String tag, String family) {
    nextUnit();
    also.rebuilt(tag, family);
  }

  @Override
  public void drawn(DemoCore.OnTheBench unit) {
    also.drawn(unit);
  }

  private void nextUnit() {
    Duration hands = FROM_UNIT_TO_UNIT.minus(clock.passed().minus(lastUnit));
    if (!hands.isNegative()) {
      clock.pass(hands);
    }
    lastUnit = clock.passed();
  }

  @Override
  public RunListener listener() {
    return new RunListener() {
      private double rate_Hz = 1;

      @Override
      public void sampling(List<Digitizer.Channel> channels, double now_Hz) {
        rate_Hz = now_Hz;
      }

      @Override
      public void frame(Digitizer.Frame frame) {
        double s = frame.samples() / rate_Hz;
        sampled_s += s;
        clock.pass(Duration.ofNanos(Math.round(s * 1e9)));
      }

      @Override
      public void ended(RunEnd end) {
        runs++;
        if (clock.passed().compareTo(day) >= 0) {
          closing.request("The day is over.");
        }
      }
    };
  }

  /** What came of it; asked for while nothing runs. */
  Figures figures() {
    Held now = Held.now(captures);
    Held then = before.orElseThrow();
    return new Figures(
        clock.passed().toSeconds() / 3600.0,
        now.heap_MB() - then.heap_MB(),
        now.handlesSince(then),
        runs,
        sampled_s);
  }

  /**
   * A burn-in.
   *
   * @param hours of the emulated clock
   * @param sampled_s of the runs
   */
  record Figures(double hours, double growth_MB, long handles, int runs, double sampled_s) {
    boolean good() {
      return growth_MB <= MOST_GROWTH_MB && handles == 0;
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT, "burn-in: hours=%.0f growth_MB=%.1f handles=%d", hours, growth_MB, handles);
    }
  }

  /** Arguments: a folder for the shop, hours of the emulated clock. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Duration day = Duration.ofMinutes(Math.round(60 * Double.parseDouble(args[1])));
    DayClock clock = new DayClock();
    Shop shop = new Shop("Burn-in", "Nowhere 1", "", "Write to us.");
    Figures figures;
    try (Workshop workshop = Workshop.open(Catalogue.ofHome(), folder, shop, "bench-1", clock)) {
      BurnIn burnIn = new BurnIn(clock, workshop.folders().captures(), DemoProgress.NONE);
      burnIn.day = day;
      for (long seed = 1; clock.passed().compareTo(day) < 0; seed++) {
        new Demo(workshop, clock, seed, burnIn).run(burnIn.closing);
        emptied(workshop.folders().captures()); // a day of them is more than a small disk holds
      }
      figures = burnIn.figures();
      if (!workshop.ledger().verify().whole()) {
        throw new IllegalStateException("the ledger is not whole");
      }
    }
    System.out.printf(
        Locale.ROOT, "%d runs, %.0f s of samples%n", figures.runs(), figures.sampled_s());
    System.out.println(figures);
    System.exit(figures.good() ? 0 : 1);
  }

  private static void emptied(Path captures) throws IOException {
    try (Stream<Path> all = Files.list(captures)) {
      for (Path file : all.filter(BurnIn::isCapture).toList()) {
        Files.delete(file);
      }
    }
  }

  private static boolean isCapture(Path file) {
    return file.toString().endsWith(CaptureFile.SEALED)
        || file.toString().endsWith(CaptureFile.RAW);
  }
}
