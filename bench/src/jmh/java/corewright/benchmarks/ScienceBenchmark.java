package corewright.benchmarks;

import corewright.measures.Capture;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.hold.Hold;
import corewright.measures.hold.HoldFinder;
import corewright.measures.meter.RunMeter;
import corewright.measures.spectrum.Harmonics;
import corewright.measures.spectrum.SineFit;
import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import corewright.measures.trend.Steps;
import corewright.measures.trend.TheilSen;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The kernels on plain numbers, finding the holds, and the meter that puts all together. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ScienceBenchmark {
  private static final double RATE_HZ = 1e6;
  private static final int SEGMENT = 1 << 15;

  @Benchmark
  public SineFit sineFit(Record record) {
    return SineFit.near(volts(record, 1 << 17), RATE_HZ, 100_300);
  }

  @Benchmark
  public Spectrum flatTop(Record record) {
    return Spectrum.of(volts(record, 1 << 17), RATE_HZ, Window.HFT90D, SEGMENT);
  }

  @Benchmark
  public double harmonics(Record record) {
    Spectrum one = Spectrum.of(volts(record, SEGMENT), RATE_HZ, Window.HFT116D, SEGMENT);
    return new Harmonics(one, 100_300).distortion(5).orElse(0);
  }

  /** Of 1,000 points: half a million slopes. */
  @Benchmark
  public TheilSen theilSen(Record record) {
    double[] x = new double[1000];
    Arrays.setAll(x, i -> i);
    return TheilSen.of(x, volts(record, x.length), 0.95);
  }

  @Benchmark
  public List<Steps.Step> steps(Record record) {
    return Steps.find(volts(record, 1000), Record.LSB_V, Record.LSB_V);
  }

  /** In four million samples. */
  @Benchmark
  public List<Hold> holds(Record record) {
    return HoldFinder.find(capture(record), Optional.empty());
  }

  /** Every reading of sixteen holds, four million samples of three channels. */
  @Benchmark
  public MeasuredRun runMeter(Record record) {
    return RunMeter.read(capture(record), MeterSettings.defaults());
  }

  private static double[] volts(Record record, int count) {
    double[] x = new double[count];
    Arrays.setAll(x, i -> record.volts.at(Record.SETTLE + i));
    return x;
  }

  private static Capture capture(Record record) {
    return new Capture(
        RATE_HZ,
        record.volts,
        Optional.of(record.amps),
        List.of(new Capture.Feed("input", record.volts)),
        Optional.empty(),
        List.of());
  }
}
