package corewright.station.work;

import corewright.bench.run.Abilities;
import corewright.bench.run.Framing;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Samples;
import java.util.Optional;
import java.util.function.Function;

/** What a bench can do, before anybody opens it: by its description and the dialects it names. */
public final class BenchAbilities {
  /** Of which nothing is known: no step is left out before the open bench has said so. */
  private static final Abilities ANY =
      new Abilities(
          true, true, Double.POSITIVE_INFINITY, 1, framing -> 0, Double.POSITIVE_INFINITY);

  private BenchAbilities() {}

  /** Where the dialects cannot be read. */
  public static Abilities unknown() {
    return ANY;
  }

  /**
   * By paper.
   *
   * @param dialectOf the dialect of a role; empty for a fixture's board, and for a load that is set
   *     by hand
   */
  public static Abilities of(
      BenchDescription bench, Function<String, Optional<Dialect>> dialectOf) {
    Optional<Samples> samples = dialectOf.apply("digitizer").flatMap(Dialect::samples);
    int channels = Math.max(1, bench.channels().size());
    return new Abilities(
        dialectOf.apply("load").filter(load -> load.can("pulse")).isPresent(),
        dialectOf.apply("source").filter(source -> source.can("swing")).isPresent(),
        samples.map(Samples::most_Hz).orElse(Double.POSITIVE_INFINITY),
        channels,
        framing -> needs(samples, framing, channels),
        bench.instrument("digitizer").map(Connection::bytesPerSecond).orElse(0.0));
  }

  /** What the digitizer's line must carry, bytes a second. */
  static double needs(Optional<Samples> samples, Framing framing, int channels) {
    return samples
        .map(s -> s.bytesPerSecond(framing.rate_Hz(), framing.samples()))
        .orElseGet(() -> framing.bytesPerSecond(channels));
  }
}
