package corewright.station.demo;

import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.emulate.unit.UnitDraw;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * An emulated bench for a console, with a unit that follows from its tag: the same tag is the same
 * unit whenever it is put on. One that was rebuilt is whole.
 */
public final class SampleBench implements AutoCloseable {
  private final DemoBench bench;
  private final BenchInstruments instruments;

  private SampleBench(DemoBench bench, BenchInstruments instruments) {
    this.bench = bench;
    this.instruments = instruments;
  }

  /**
   * Opens it.
   *
   * @param family {@code sd48}, {@code ie110} or {@code pv65}
   * @param rebuilt whether the unit was rebuilt, and has no fault any more
   * @param paced whether its time goes as slowly as the clock's, so that people can watch
   */
  public static SampleBench open(
      String family, String tag, boolean rebuilt, Clock clock, boolean paced) {
    long seed = seed(tag);
    UnitDraw draw = new UnitDraw(seed);
    HiddenFault fault = rebuilt ? HiddenFault.NONE : HiddenFault.of(seed);
    DemoBench bench = DemoBench.open(fault.put(draw, family), seed, clock);
    BenchInstruments all = bench.instruments();
    return new SampleBench(bench, paced ? paced(all, clock) : all);
  }

  /** What is wrong with the unit of a tag, in words: for whoever has already said what it is. */
  public static String truth(String tag) {
    return HiddenFault.of(seed(tag)).words();
  }

  private static BenchInstruments paced(BenchInstruments all, Clock clock) {
    return all.with(new PacedDigitizer(all.digitizer(), clock));
  }

  private static long seed(String tag) {
    CRC32 crc = new CRC32();
    crc.update(tag.getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }

  public BenchDescription description() {
    return bench.description();
  }

  public BenchInstruments instruments() {
    return instruments;
  }

  @Override
  public void close() {
    bench.close();
  }
}
